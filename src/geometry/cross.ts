import type { Point } from './point.ts';

/**
 * The signed area of the parallelogram on two vectors: positive when `b` lies on the side of `a`
 * to which the x axis turns to meet the y axis (on the ground: to the left), 0 when in line.
 */
export const cross = <Space extends string>(a: Point<Space>, b: Point<NoInfer<Space>>): number =>
  a.x * b.y - a.y * b.x;
