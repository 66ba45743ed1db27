import { pictureKind } from '../../importers/picture/pictureKind.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Bench } from '../bench.ts';
import { layPicture } from './layPicture.ts';

/** Bytes of the largest file that is looked at. Ours: twice what a camera of 100 megapixels writes. */
const mostBytes = 200_000_000;
/** Bytes at the head of a file by which it is known. */
const head = 1100;

const kindOf = async (file: File): Promise<ReturnType<typeof pictureKind>> => {
  try {
    return pictureKind(new Uint8Array(await file.slice(0, head).arrayBuffer()));
  } catch {
    return null;
  }
};

/** Whether a file is a picture or a PDF: by its bytes, or says that it is one by its name or type. */
export const isPicture = async (file: File): Promise<boolean> =>
  file.type.startsWith('image/') ||
  /\.(jpe?g|png|webp|pdf|heic|heif|gif|tiff?|bmp)$/i.test(file.name) ||
  (await kindOf(file)) !== null;

/** Whether a file is a PDF, by its bytes. */
export const isPdf = async (file: File): Promise<boolean> =>
  (await kindOf(file)) === 'application/pdf';

/** The name of a file without its ending. */
const stem = (name: string): string => name.replace(/\.[A-Za-z0-9]{1,5}$/, '');

/**
 * Brings a picture under the drawing; of a PDF a page is chosen first. What cannot be brought gets one
 * line, and the drawing stays as it is.
 */
export const bringPicture = async (bench: Bench, file: File): Promise<void> => {
  const { session, pictures, page } = bench;
  const refuse = (why: string) =>
    session.setState({ say: phrase`${file.name}: ${why}; the drawing is as it was` });
  if (file.size > mostBytes) return refuse(phrase`too large a file, expected at most 200 MB`);
  if (await isPdf(file)) {
    page.setState(file, true);
    return;
  }
  session.setState({ say: phrase`${file.name}: reading it` });
  const taken = await pictures.worker.take({ do: 'take', file });
  if (!taken.ok) return refuse(taken.reason);
  await layPicture(bench, { file: file.name, label: stem(file.name), taken: taken.value });
};
