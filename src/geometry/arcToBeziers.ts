import { moved } from './moved.ts';
import { radians } from '../units/radians.ts';
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

const quarter = Math.PI / 2;

/**
 * An arc as equal cubic curves of at most 90 degrees, each beginning where the last ends; none
 * for a sweep of 0. The curve leaves the circle outwards only, by at most 2.73e-4 of the radius
 * (the error of a quarter; it falls with the sixth power of the piece): on a leaf of 12 ft drawn
 * at 1 in = 4 ft that is under 0.001 in of paper.
 */
export const arcToBeziers = <Space extends string>(arc: Arc<Space>): Bezier<Space>[] => {
  const { centre, radius, start, sweep } = arc;
  // the small number keeps rounding from cutting whole quarters once more
  const count = Math.ceil(Math.abs(sweep) / quarter - 1e-9);
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * radius;
  const on = (angle: number) => moved(centre, radians(angle), radius);
  return Array.from({ length: count }, (_, n) => {
    const [first, last] = [start + n * step, start + (n + 1) * step];
    const [from, to] = [on(first), on(last)];
    const leaving = moved(from, radians(first + quarter), reach);
    const arriving = moved(to, radians(last - quarter), reach);
    return { from, leaving, arriving, to };
  });
};
