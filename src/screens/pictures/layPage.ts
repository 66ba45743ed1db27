import { phrase } from '../../phrases/phrase.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { Bench } from '../bench.ts';
import { layPicture } from './layPicture.ts';
import type { OpenPdf } from './openPdf.ts';
import { mostKept } from './mostKept.ts';

/** A page of a PDF that is open, counted from 1. */
export interface Page {
  readonly file: File;
  readonly pdf: OpenPdf;
  readonly n: number;
}

/** What a PDF carries does not come under the drawing. */
const leftOut = ([first = '', ...more]: readonly string[]): string =>
  more.length === 0
    ? phrase`the file in it, ${quotedText(first)}, is left out`
    : phrase`the ${more.length + 1} files in it are left out`;

/** Draws a page of a PDF and lays it under the drawing; one line where that cannot be, else null. */
export const layPage = async (bench: Bench, { file, pdf, n }: Page): Promise<string | null> => {
  const refused = (why: string) => phrase`${file.name}: ${why}; the drawing is as it was`;
  const drawn = await pdf.draw(n, mostKept.side);
  if (!drawn.ok) return refused(drawn.reason);
  const call = { do: 'take page', page: drawn.value, file, n } as const;
  const taken = await bench.pictures.worker.take(call);
  if (!taken.ok) return refused(taken.reason);
  const name = file.name.replace(/\.pdf$/i, '');
  const label = pdf.pages === 1 ? name : phrase`${name}, page ${n}`;
  await layPicture(bench, {
    file: file.name,
    label,
    taken: taken.value,
    ...(pdf.files.length === 0 ? {} : { note: leftOut(pdf.files) }),
  });
  return null;
};
