import regularFont from '@expo-google-fonts/barlow/400Regular/Barlow_400Regular.ttf?url';
import boldFont from '@expo-google-fonts/barlow/600SemiBold/Barlow_600SemiBold.ttf?url';
import type { Page } from '../../drawing/sheet/page.ts';
import type { PdfSet } from '../../exporters/pdf/pdfInfoFor.ts';
import type { Site } from '../../site/site.ts';
import { bytesAt } from './bytesAt.ts';

/** Pages of a site, of which sort, the saved text that they are of, the file that goes with them. */
interface Made extends PdfSet {
  readonly pages: readonly Page[];
  readonly site: Site;
}

/**
 * The pages as a PDF. The PDF writers and their fonts are fetched the first time; rejects where they
 * cannot be had.
 */
export const makePdf = async ({ pages, site, ...set }: Made): Promise<Uint8Array> => {
  const [{ toPdf }, { pdfInfoFor }, regular, bold] = await Promise.all([
    import('../../exporters/pdf/toPdf.ts'),
    import('../../exporters/pdf/pdfInfoFor.ts'),
    bytesAt(regularFont),
    bytesAt(boldFont),
  ]);
  return toPdf(pages, { regular, bold }, pdfInfoFor(site, set), set.file);
};
