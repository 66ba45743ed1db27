import { initWasm, Resvg } from '@resvg/resvg-wasm';
import type { Page } from '../../drawing/sheet/page.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { toSvg } from '../svg/toSvg.ts';
import { atTrueSize } from './atTrueSize.ts';
import { pixelsOf } from './pixelsOf.ts';
import type { PngParts } from './pngParts.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The library takes its module once for good. */
let started: Promise<void> | null = null;

const start = async (raster: Uint8Array): Promise<void> => {
  started ??= initWasm(new Uint8Array(raster));
  try {
    await started;
  } catch (fault) {
    started = null;
    throw fault;
  }
};

const rastered = (svg: string, { regular, bold }: PngParts): Uint8Array => {
  const font = { fontBuffers: [regular, bold], loadSystemFonts: false };
  const drawing = new Resvg(svg, { font });
  try {
    const picture = drawing.render();
    try {
      return picture.asPng();
    } finally {
      picture.free();
    }
  } finally {
    drawing.free();
  }
};

/**
 * One page as a PNG of its paper at a resolution in dots per inch, `dpiRange`, that prints at true size.
 * The same page, parts and resolution give the same bytes. Unread with one line where it cannot be made
 * for its size; rejects where the module that rasters is none.
 */
export const toPng = async (
  page: Page,
  parts: PngParts,
  dpi: number,
): Promise<Parsed<Uint8Array>> => {
  const pixels = pixelsOf(page.paper, dpi);
  if (!pixels.ok) return pixels;
  await start(parts.raster);
  try {
    return read(atTrueSize(rastered(toSvg(page, pixels.value), parts), dpi));
  } catch {
    return unread(
      phrase`PNG of page ${page.title} at ${dpi} dpi: it could not be made: expected a lower resolution`,
    );
  }
};
