import type { PaperPoint } from '../../geometry/point.ts';
import type { Beside, Primitive } from '../primitive.ts';
import type { Projection } from '../projection.ts';
import type { LabelSize } from './label.ts';

type TextPrimitive = Extract<Primitive, { kind: 'text' }>;

/** Between the letters of a row and what it stands beside, paper inches. */
const clear = 0.03;

/** Where the middle of an upright text of a row may stand: square off its point and along the row, paper inches. */
export interface BesideRoom {
  readonly way: PaperPoint;
  readonly off: number;
  readonly slip: number;
}

/** How many places there are beside a point. */
const besidePlaces = 6;

/** Where a text of a size may stand in a row. */
export const besideRoom = (
  { rise }: Pick<TextPrimitive, 'rise'>,
  { way: { x, y }, taken }: Beside,
  { width, height }: LabelSize,
  { scale }: Projection,
): BesideRoom => {
  const [wide, high] = [Math.abs(x), Math.abs(y)];
  const reach = (wide * width + high * height) / 2;
  return {
    way: { x, y: -y },
    off: Math.max(Math.abs(rise), taken * scale + clear) + reach,
    slip: (high * width + wide * height) / 2 + clear,
  };
};

/**
 * The nth way from the point of a text, paper inches: square off it on the side of the row, there a little on along
 * the row or back, then the same on the other side. Alike in number and order for every text.
 */
export const besideShift = ({ way, off, slip }: BesideRoom, n: number): PaperPoint => {
  const out = n < besidePlaces / 2 ? off : -off;
  const along = [0, slip, -slip][n % 3] ?? 0;
  return { x: way.x * out - way.y * along, y: way.y * out + way.x * along };
};
