import type { Paper } from '../../drawing/sheet/papers.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { dpiRange } from './dpiRange.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Width and height of a picture in pixels, whole numbers. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
}

/**
 * The most pixels that a page may come to: four bytes each, and the writer holds them twice. ARCH D at
 * 300 dpi is 78 million. Ours.
 */
export const mostPixels = 80_000_000;

const millions = (count: number): string => phrase`${Math.ceil(count / 1e6)} million pixels`;

/**
 * How many pixels a paper (inches) is at a resolution (dots per inch), each side rounded to the nearest.
 * Unread with one line for a resolution out of range, or a page that is too large for it.
 */
export const pixelsOf = ({ label, width, height }: Paper, dpi: number): Parsed<Pixels> => {
  const { least, most } = dpiRange;
  if (!Number.isInteger(dpi) || dpi < least || dpi > most) {
    return unread(phrase`PNG at ${dpi} dpi: expected a whole number from ${least} to ${most}`);
  }
  const pixels = { width: Math.round(width * dpi), height: Math.round(height * dpi) };
  const count = pixels.width * pixels.height;
  if (count <= mostPixels) return read(pixels);
  const fits = Math.floor(Math.sqrt(mostPixels / (width * height)));
  return unread(
    phrase`PNG of ${label} at ${dpi} dpi: ${millions(count)} are too many to make: expected ${fits} dpi or less`,
  );
};
