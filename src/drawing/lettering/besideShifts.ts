import type { PaperPoint } from '../../geometry/point.ts';
import type { Primitive } from '../primitive.ts';
import type { Projection } from '../projection.ts';
import { labelSize } from './label.ts';

type TextPrimitive = Extract<Primitive, { kind: 'text' }>;

/** Between the letters of a row and what it stands beside, paper inches. */
const clear = 0.03;

/**
 * Where the middle of an upright text of a row may stand, as ways from its point in paper inches:
 * square off the point on the side of the row, there a little on along the row or back, then the
 * same on the other side. Alike in number and order for every text; none without a row.
 */
export const besideShifts = (text: TextPrimitive, { scale }: Projection): readonly PaperPoint[] => {
  const { beside, rise } = text;
  if (beside === undefined) return [];
  const { width, height } = labelSize(text);
  const way = { x: beside.way.x, y: -beside.way.y };
  const reach = (Math.abs(way.x) * width + Math.abs(way.y) * height) / 2;
  const off = Math.max(Math.abs(rise), beside.taken * scale + clear) + reach;
  const slip = (Math.abs(way.y) * width + Math.abs(way.x) * height) / 2 + clear;
  return [off, -off].flatMap((out) =>
    [0, slip, -slip].map((along) => ({
      x: way.x * out - way.y * along,
      y: way.y * out + way.x * along,
    })),
  );
};
