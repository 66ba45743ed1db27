import type { Point } from './point.ts';

/** The vector from `b` to `a`; unit and axes of their space. */
export const subtract = <Space extends string>(
  a: Point<Space>,
  b: Point<NoInfer<Space>>,
): Point<Space> => ({ x: a.x - b.x, y: a.y - b.y });
