import type { Point } from './point.ts';

/** The sum of two vectors, or a point moved by a vector; unit and axes of their space. */
export const add = <Space extends string>(
  a: Point<Space>,
  b: Point<NoInfer<Space>>,
): Point<Space> => ({ x: a.x + b.x, y: a.y + b.y });
