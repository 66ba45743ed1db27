import { PDFName, PDFRawStream, type PDFDocument } from 'pdf-lib';

/** Puts packed contents in the place of what the pages of a document have. */
export const setContents = (doc: PDFDocument, contents: readonly Uint8Array[]): void => {
  doc.getPages().forEach(({ node }, n) => {
    const ref = node.get(PDFName.of('Contents'));
    const held = doc.context.lookup(ref);
    const content = contents[n];
    if (!(held instanceof PDFRawStream) || content === undefined) return;
    doc.context.assign(ref as never, PDFRawStream.of(held.dict, content));
  });
};
