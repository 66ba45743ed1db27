import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Text } from '../atom.ts';
import type { Ink } from '../ink.ts';
import { printable } from '../printable.ts';
import { textWidth } from '../textWidth.ts';
import { letterExtent } from './textBox.ts';

/** What a label says and how: lines under one another, each on its middle. */
export interface LabelStyle {
  readonly text: string;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
  readonly ink: Ink;
}

/** A label at one place: its letters and the room they take. */
export interface Label {
  readonly texts: readonly Text[];
  readonly box: OrientedBox<'paper'>;
}

/** From one line's baseline to the next, in ems. */
const leading = 1.12;

/** Lines of a label as they are printed; a label without letters has none. */
const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map(printable)
    .filter((line) => line !== '');

/** Width and height of a label in paper inches, as far as its letters reach. */
export const labelSize = ({ text, size, weight }: LabelStyle) => {
  const lines = linesOf(text);
  return {
    width: Math.max(0, ...lines.map((line) => textWidth(line, size, weight))),
    height: (letterExtent.above + letterExtent.below + leading * (lines.length - 1)) * size,
  };
};

/** A label with its middle at a point of the paper, at an angle counter-clockwise as seen. */
export const labelAt = (style: LabelStyle, middle: PaperPoint, angle: Radians): Label => {
  const { size, weight, ink } = style;
  const lines = linesOf(style.text);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { width, height } = labelSize(style);
  // letters reach farther up from the middle of their capitals than down
  const sunk = ((letterExtent.above - letterExtent.below - letterExtent.capital) / 2) * size;
  const texts = lines.map((text, n): Text => {
    const up = ((lines.length - 1) / 2 - n) * leading * size - sunk;
    return {
      do: 'text',
      text,
      at: { x: middle.x - up * sin, y: middle.y - up * cos },
      size,
      angle,
      align: 'middle',
      baseline: 'middle',
      weight,
      ink,
      halo: 'paper',
    };
  });
  const box = { centre: middle, halfWidth: width / 2, halfHeight: height / 2 };
  return { texts, box: { ...box, angle: radians(-angle) } };
};
