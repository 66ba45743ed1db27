import { PDFName, type PDFDocument } from 'pdf-lib';
import { pdfText } from './pdfText.ts';

/** A bookmark for each page by its title, and pages counted from 1 as the sheets are. */
export const addBookmarks = (doc: PDFDocument, titles: readonly string[]): void => {
  const { catalog, context } = doc;
  const list = context.nextRef();
  const marks = titles.map(() => context.nextRef());
  const [first, last] = [marks[0], marks.at(-1)];
  if (first === undefined || last === undefined) return;
  for (const [n, page] of doc.getPages().entries()) {
    const mark = marks[n];
    if (mark === undefined) continue;
    const bookmark = context.obj({
      Title: pdfText(titles[n] ?? ''),
      Parent: list,
      Dest: [page.ref, 'Fit'],
    });
    const [before, after] = [marks[n - 1], marks[n + 1]];
    if (before !== undefined) bookmark.set(PDFName.of('Prev'), before);
    if (after !== undefined) bookmark.set(PDFName.of('Next'), after);
    context.assign(mark, bookmark);
  }
  context.assign(
    list,
    context.obj({ Type: 'Outlines', First: first, Last: last, Count: marks.length }),
  );
  catalog.set(PDFName.of('Outlines'), list);
  // one page needs no list of pages beside it
  catalog.set(PDFName.of('PageMode'), PDFName.of(marks.length > 1 ? 'UseOutlines' : 'UseNone'));
  catalog.set(PDFName.of('PageLabels'), context.obj({ Nums: [0, { S: 'D' }] }));
};
