import regularFont from '@expo-google-fonts/barlow/400Regular/Barlow_400Regular.ttf?url';
import boldFont from '@expo-google-fonts/barlow/600SemiBold/Barlow_600SemiBold.ttf?url';
import type { Page } from '../../drawing/sheet/page.ts';
import type { Site } from '../../site/site.ts';
import { today } from '../today.ts';

const bytesAt = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`a font of the sheet: expected it at ${address}`);
  return new Uint8Array(await answer.arrayBuffer());
};

/**
 * The pages as a PDF. The PDF writer and its fonts are fetched the first time; rejects where they
 * cannot be had.
 */
export const makePdf = async (
  pages: readonly Page[],
  site: Site,
  siteText: string,
  sort?: 'Order sheet' | 'Proposal',
): Promise<Uint8Array> => {
  const [{ toPdf }, { pdfInfoFor }, regular, bold] = await Promise.all([
    import('../../exporters/pdf/toPdf.ts'),
    import('../../exporters/pdf/pdfInfoFor.ts'),
    bytesAt(regularFont),
    bytesAt(boldFont),
  ]);
  const info = pdfInfoFor(site, siteText, `${today()}T00:00:00Z`, sort);
  return toPdf(pages, { regular, bold }, info);
};
