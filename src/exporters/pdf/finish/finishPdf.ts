import { ParseSpeeds, PDFDocument } from 'pdf-lib';
import type { Page } from '../../../drawing/sheet/page.ts';
import type { SiteFile } from '../../../site/siteFile.ts';
import type { PdfInfo } from '../pdfInfo.ts';
import type { WrittenPage } from '../writePages.ts';
import { addBookmarks } from './addBookmarks.ts';
import { addLayers } from './addLayers.ts';
import { addLinks } from './addLinks.ts';
import { addStructure } from './addStructure.ts';
import { attachFile } from './attachFile.ts';
import { nameFonts } from './nameFonts.ts';
import { packedPdf } from './packedPdf.ts';
import { setContents } from './setContents.ts';
import { setProperties } from './setProperties.ts';

/** Pages, what was written of each, and what a document has besides. */
export interface Finish {
  readonly pages: readonly Page[];
  readonly written: readonly WrittenPage[];
  readonly info: PdfInfo;
  readonly file: SiteFile | null;
}

/**
 * Painted pages as a whole PDF: with properties, layers, bookmarks, links, a structure and the file that is
 * attached. No clock is asked and nothing is drawn by lot.
 */
export const finishPdf = async (
  painted: ArrayBuffer,
  { pages, written, info, file }: Finish,
): Promise<Uint8Array> => {
  const doc = await PDFDocument.load(painted, {
    updateMetadata: false,
    parseSpeed: ParseSpeeds.Fastest,
  });
  setContents(
    doc,
    written.map(({ content }) => content),
  );
  setProperties(doc, info);
  nameFonts(doc);
  const used = pages.flatMap(({ layers }) => layers.filter(({ atoms }) => atoms.length > 0));
  addLayers(doc, new Set(used.map((layer) => layer.name)));
  const titles = pages.map(({ title }) => title);
  addBookmarks(doc, titles);
  const links = addLinks(doc, pages);
  addStructure(
    doc,
    titles.map((title, n) => ({ title, marks: written[n]?.marks ?? [], links: links[n] ?? [] })),
  );
  if (file !== null) attachFile(doc, file, info.day);
  return packedPdf(doc.context);
};
