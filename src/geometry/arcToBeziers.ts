import { arcShape } from './arcShape.ts';
import type { Radians } from '../units/radians.ts';
import type { Point } from './point.ts';

/** Part of a circle; angles from the x axis towards the y axis, negative sweeps the other way. */
export interface Arc<Space extends string> {
  readonly centre: Point<Space>;
  readonly radius: number;
  readonly start: Radians;
  readonly sweep: Radians;
}

/** One cubic Bézier curve. */
export interface Bezier<Space extends string> {
  readonly from: Point<Space>;
  readonly leaving: Point<Space>;
  readonly arriving: Point<Space>;
  readonly to: Point<Space>;
}

const plus = <Space extends string>(
  at: Point<Space>,
  by: { readonly x: number; readonly y: number },
) =>
  ({
    x: at.x + by.x,
    y: at.y + by.y,
  }) as Point<Space>;

/** An arc as cubic curves: see `arcShape`. */
export const arcToBeziers = <Space extends string>(arc: Arc<Space>): Bezier<Space>[] => {
  const { centre, radius, start, sweep } = arc;
  return arcShape(radius, start, sweep).map((curve) => {
    const [from, to] = [plus(centre, curve.from), plus(centre, curve.to)];
    return { from, leaving: plus(from, curve.leaving), arriving: plus(to, curve.arriving), to };
  });
};
