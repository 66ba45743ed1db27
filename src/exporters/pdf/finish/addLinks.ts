import { PDFName, type PDFDocument, type PDFRef } from 'pdf-lib';
import type { Page } from '../../../drawing/sheet/page.ts';
import { pdfText } from './pdfText.ts';

/** PDF units in an inch of paper. */
const inch = 72;
/** ISO 32000-1, table 165: a link is printed with the page, which for one without a border shows nothing. */
const printed = 4;

/** A link as it lies on its page, and the title of where it leads. */
export interface LaidLink {
  readonly ref: PDFRef;
  readonly title: string;
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/**
 * Lays the links of pages down as annotations without a border, each leading to a whole page. One that leads
 * to no page of the set is left out.
 * @returns those of each page.
 */
export const addLinks = (
  doc: PDFDocument,
  pages: readonly Page[],
): readonly (readonly LaidLink[])[] => {
  const { context } = doc;
  const sheets = doc.getPages();
  return sheets.map(({ node }, n) => {
    const { links = [], paper } = pages[n] ?? {};
    const laid = links.flatMap(({ rect: { x, y, width, height }, page }): LaidLink[] => {
      const to = sheets[page - 1];
      const title = pages[page - 1]?.title;
      if (to === undefined || title === undefined || paper === undefined) return [];
      const corners = [x, paper.height - y - height, x + width, paper.height - y];
      const link = context.obj({
        Type: 'Annot',
        Subtype: 'Link',
        Rect: corners.map((at) => rounded(at * inch)),
        Border: [0, 0, 0],
        F: printed,
        Contents: pdfText(title),
        Dest: [to.ref, 'Fit'],
      });
      return [{ ref: context.register(link), title }];
    });
    if (laid.length > 0) node.set(PDFName.of('Annots'), context.obj(laid.map(({ ref }) => ref)));
    return laid;
  });
};
