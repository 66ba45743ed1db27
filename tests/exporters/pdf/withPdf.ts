import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Lets a test ask another program of a PDF, and closes it afterwards. */
export const withPdf = async <T>(
  bytes: Uint8Array,
  ask: (pdf: PDFDocumentProxy) => Promise<T>,
): Promise<T> => {
  // the reader takes the bytes over, so it gets its own
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  try {
    return await ask(await task.promise);
  } finally {
    await task.destroy();
  }
};
