import { getDocument, GlobalWorkerOptions } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { mostPixels } from '../../importers/picture/pictureHeader.ts';
import { phrase } from '../../phrases/phrase.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { PdfParts } from './pdfParts.ts';

/** A PDF that was opened: its pages can be drawn, counted from 1. */
export interface OpenPdf {
  readonly pages: number;
  /** The names of the files that it carries. */
  readonly files: readonly string[];
  /** A page so large that its longer side has `longest` pixels; one line where it cannot be drawn. */
  readonly draw: (n: number, longest: number) => Promise<Parsed<ImageBitmap>>;
  readonly close: () => void;
}

/** A page that is not drawn by then never will be, milliseconds. */
const patience = 60_000;

const timely = <T>(work: Promise<T>): Promise<T> =>
  Promise.race([
    work,
    new Promise<never>((_, fail) =>
      setTimeout(() => fail(new Error(phrase`it never ends`)), patience),
    ),
  ]);

const lineOf = (error: unknown): string => {
  if (error instanceof Error && error.name === 'PasswordException') {
    return phrase`the PDF asks for a password: save it without one first`;
  }
  const why = error instanceof Error ? error.message : String(error);
  return phrase`the PDF is damaged or cannot be shown (${why.split('\n')[0]?.slice(0, 80) ?? ''})`;
};

const drawPage = async (
  pdf: PDFDocumentProxy,
  n: number,
  longest: number,
): Promise<ImageBitmap> => {
  const page = await pdf.getPage(n);
  const { width, height } = page.getViewport({ scale: 1 });
  const viewport = page.getViewport({ scale: longest / Math.max(width, height) });
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(viewport.width));
  canvas.height = Math.max(1, Math.round(viewport.height));
  // drawn as it is printed: without fields to fill in, and not by the frames of the screen
  const drawing = page.render({ canvas, viewport, intent: 'print', background: '#ffffff' });
  try {
    await timely(drawing.promise);
    return await createImageBitmap(canvas);
  } finally {
    drawing.cancel();
    page.cleanup();
    // lets its memory go at once
    canvas.width = 0;
  }
};

const filesOf = async (pdf: PDFDocumentProxy): Promise<string[]> => {
  try {
    return Object.keys((await timely(pdf.getAttachments())) ?? {});
  } catch {
    // its pages can be shown all the same
    return [];
  }
};

/** Opens a PDF in a worker of its own. Unread with one line for what is no PDF, damaged or locked by a password. */
export const openPdf = async (file: Blob): Promise<Parsed<OpenPdf>> => {
  GlobalWorkerOptions.workerSrc = new URL(
    'pdfjs-dist/legacy/build/pdf.worker.min.mjs',
    import.meta.url,
  ).href;
  const task = getDocument({
    data: new Uint8Array(await file.arrayBuffer()),
    verbosity: 0,
    isEvalSupported: false,
    maxImageSize: mostPixels.all,
    BinaryDataFactory: PdfParts,
    // the places are of no account to `PdfParts`, but without them it is not asked
    standardFontDataUrl: './',
    wasmUrl: './',
  });
  const close = () => void task.destroy();
  try {
    const pdf = await timely(task.promise);
    const draw: OpenPdf['draw'] = async (n, longest) => {
      try {
        return read(await drawPage(pdf, n, longest));
      } catch (error) {
        return unread(lineOf(error));
      }
    };
    return read({ pages: pdf.numPages, files: await filesOf(pdf), draw, close });
  } catch (error) {
    close();
    return unread(lineOf(error));
  }
};
