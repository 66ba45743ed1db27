import type { Point } from './point.ts';

/** The scalar product of two vectors: 0 when they are square to each other or one is nothing. */
export const dot = <Space extends string>(a: Point<Space>, b: Point<NoInfer<Space>>): number =>
  a.x * b.x + a.y * b.y;
