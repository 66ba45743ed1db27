import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What a PDF holds, as another program reads it: the size and the texts of each page, and the files in it. */
export const readPdf = async (bytes: Uint8Array) => {
  // the reader takes the bytes over, so it gets its own
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const file = await task.promise;
  const info = { ...(await file.getMetadata()).info } as Record<string, unknown>;
  const pages = await Promise.all(
    Array.from({ length: file.numPages }, async (_, n) => {
      const page = await file.getPage(n + 1);
      const { items } = await page.getTextContent();
      const texts = items.flatMap((item) => ('str' in item && item.str.trim() ? [item.str] : []));
      const { width, height } = page.getViewport({ scale: 1 });
      const { fnArray } = await page.getOperatorList();
      return { texts, width: width / 72, height: height / 72, operators: fnArray };
    }),
  );
  const files = Object.keys((await file.getAttachments()) ?? {});
  await task.destroy();
  return { info, pages, files };
};
