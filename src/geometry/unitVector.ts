import type { Point } from './point.ts';

/** The direction from one point to another as a vector of length 1; null when they coincide. */
export const unitVector = <Space extends string>(
  from: Point<Space>,
  to: Point<NoInfer<Space>>,
): Point<Space> | null => {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(x, y);
  return length === 0 ? null : { x: x / length, y: y / length };
};
