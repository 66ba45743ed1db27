import { radians } from '../../units/radians.ts';
import type { Cell, Text } from '../atom.ts';
import type { Ink } from '../ink.ts';
import { printable } from '../printable.ts';
import { shorten } from '../shorten.ts';
import { textWidth } from '../textWidth.ts';
import { letters } from './letters.ts';

/** How a line is set; whatever is not said is body text from the left. `width` cuts it to fit. */
export interface LineLook {
  readonly size?: number;
  readonly weight?: 'regular' | 'bold';
  readonly ink?: Ink;
  readonly align?: 'left' | 'middle' | 'right';
  readonly width?: number;
  /** The cell of a table that it stands in. */
  readonly cell?: Cell;
}

/**
 * One line of text with the middle of its capitals at a height of the page; no atom where nothing
 * is left to print. Paper inches.
 */
export const lineOfText = (text: string, x: number, y: number, look: LineLook = {}): Text[] => {
  const { size = letters.body, weight = 'regular', ink = 'text', align = 'left' } = look;
  const { width, cell } = look;
  const clean = printable(text);
  const cut = width === undefined ? clean : shorten(clean, width, size, weight);
  if (cut === '') return [];
  return [
    {
      do: 'text',
      text: cut,
      at: { x, y },
      size,
      angle: radians(0),
      align,
      baseline: 'middle',
      weight,
      ink,
      halo: 'none',
      ...(cell === undefined ? {} : { cell }),
    },
  ];
};

/**
 * The largest of some sizes, rising, at which a line fits a width; the smallest where none does. The
 * line is then cut.
 */
export const sizeToFit = (
  text: string,
  width: number,
  sizes: readonly number[],
  weight: 'regular' | 'bold',
): number =>
  sizes.findLast((size) => textWidth(printable(text), size, weight) <= width) ??
  sizes[0] ??
  letters.body;
