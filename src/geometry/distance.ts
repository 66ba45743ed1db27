import type { Point } from './point.ts';

/** The distance between two points, in the unit of their space; never negative. */
export const distance = <Space extends string>(a: Point<Space>, b: Point<NoInfer<Space>>): number =>
  Math.hypot(b.x - a.x, b.y - a.y);
