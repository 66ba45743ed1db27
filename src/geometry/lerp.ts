import type { Point } from './point.ts';

/**
 * The point at a share of the way from `a` (0) to `b` (1), both ends exact. Shares outside 0 to 1
 * lie on the line beyond its ends.
 */
export const lerp = <Space extends string>(
  a: Point<Space>,
  b: Point<NoInfer<Space>>,
  share: number,
): Point<Space> =>
  // from the nearer end, so that share 1 gives b to the last bit
  share < 0.5
    ? { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }
    : { x: b.x - (b.x - a.x) * (1 - share), y: b.y - (b.y - a.y) * (1 - share) };
