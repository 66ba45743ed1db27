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

/** Widths are remembered for an em of so many units, in which they are whole numbers. */
const thousandths = 1000;

/** From one line's baseline to the next, in ems. */
const leading = 1.12;

/** Lines of a label as they are printed; a label without letters has none. */
const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map(printable)
    .filter((line) => line !== '');

/** A text as it is printed, and the width of its widest line in thousandths of an em. */
interface Printed {
  readonly lines: readonly string[];
  readonly width: number;
}

/** A drawing asks for the same texts again and again; more than so many are not remembered at once. */
const mostRemembered = 20_000;
const remembered = { regular: new Map<string, Printed>(), bold: new Map<string, Printed>() };

const printed = ({ text, weight }: LabelStyle): Printed => {
  const known = remembered[weight].get(text);
  if (known !== undefined) return known;
  const lines = linesOf(text);
  const width = Math.max(0, ...lines.map((line) => textWidth(line, thousandths, weight)));
  if (remembered[weight].size >= mostRemembered) remembered[weight].clear();
  remembered[weight].set(text, { lines, width });
  return { lines, width };
};

/** Width and height in paper inches. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** Width and height of a label, as far as its letters reach. */
export const labelSize = (style: LabelStyle): LabelSize => {
  const { lines, width } = printed(style);
  return {
    width: (width * style.size) / thousandths,
    height: (letterExtent.above + letterExtent.below + leading * (lines.length - 1)) * style.size,
  };
};

/** The room that a label of a size takes, as `labelAt` says. */
export const labelBox = (
  { width, height }: LabelSize,
  middle: PaperPoint,
  angle: Radians,
): OrientedBox<'paper'> => ({
  centre: middle,
  halfWidth: width / 2,
  halfHeight: height / 2,
  angle: radians(-angle),
});

/** A label with its middle at a point of the paper, at an angle counter-clockwise as seen. */
export const labelAt = (style: LabelStyle, middle: PaperPoint, angle: Radians): Label => {
  const { size, weight, ink } = style;
  const { lines } = printed(style);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
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
  return { texts, box: labelBox(labelSize(style), middle, angle) };
};
