import rasterModule from '@resvg/resvg-wasm/index_bg.wasm?url';
import regularFont from '@expo-google-fonts/barlow/400Regular/Barlow_400Regular.ttf?url';
import boldFont from '@expo-google-fonts/barlow/600SemiBold/Barlow_600SemiBold.ttf?url';
import type { Page } from '../../drawing/sheet/page.ts';
import type { Parsed } from '../../units/parsed.ts';
import { bytesAt } from './bytesAt.ts';

/**
 * A page as a PNG at a resolution, dots per inch. What makes it is fetched the first time; rejects where it
 * cannot be had, unread with one line where the page is too large for it.
 */
export const makePng = async (page: Page, dpi: number): Promise<Parsed<Uint8Array>> => {
  const [{ toPng }, raster, regular, bold] = await Promise.all([
    import('../../exporters/png/toPng.ts'),
    bytesAt(rasterModule),
    bytesAt(regularFont),
    bytesAt(boldFont),
  ]);
  return toPng(page, { raster, regular, bold }, dpi);
};
