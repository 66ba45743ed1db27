import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { findTool } from '../tests/findTool.ts';

/** Every text of a PDF file as pdf.js reads it, a list a page, in the order they are drawn. */
export const textsOf = async (file: string): Promise<string[][]> => {
  const task = getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 });
  const pdf = await task.promise;
  const pages: string[][] = [];
  for (let n = 1; n <= pdf.numPages; n += 1) {
    const page = await pdf.getPage(n);
    const { items } = await page.getTextContent();
    pages.push(items.flatMap((item) => ('str' in item && item.str.trim() ? [item.str] : [])));
  }
  await task.destroy();
  return pages;
};

/** The names of the files that a PDF file carries, as pdf.js finds them. */
export const filesIn = async (file: string): Promise<string[]> => {
  const task = getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 });
  const names = Object.keys((await (await task.promise).getAttachments()) ?? {});
  await task.destroy();
  return names;
};

/** The text of a PDF file as poppler reads it; throws with poppler's own words where it cannot. */
export const popplerText = (file: string): string =>
  execFileSync(findTool('pdftotext', 'poppler-utils'), ['-layout', file, '-'], {
    encoding: 'utf8',
  });

/** What `qpdf --check` says of a PDF file; throws where it finds an error. */
export const qpdfCheck = (file: string): string =>
  execFileSync(findTool('qpdf', 'qpdf'), ['--check', file], { encoding: 'utf8' });
