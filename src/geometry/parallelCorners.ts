import { add } from './add.ts';
import { dot } from './dot.ts';
import { perpendicular } from './perpendicular.ts';
import { scale } from './scale.ts';
import { unitVector } from './unitVector.ts';
import type { Point } from './point.ts';

/** Sides that turn back by more have no corner to speak of: straight out is as near to both of them. */
const folded = 5e-8;

/** The corner of the parallel to two sides that meet at a point; straight out where they fold back. */
const cornerAt = <Space extends string>(
  at: Point<Space>,
  sides: readonly Point<Space>[],
  off: number,
): Point<Space> => {
  const [before, after = before] = sides;
  if (before === undefined || after === undefined) return at;
  const sum = add(before, after);
  // 1 and the cosine between them, without taking like from like where they all but fold back
  const both = dot(sum, sum) / 2;
  if (both < folded) return add(at, scale(before, off));
  return add(at, scale(sum, off / both));
};

/**
 * The corners of the parallel to a chain of points, one for each of them, at a distance in the unit
 * of the space: to the left of the way it runs where that is above zero. Round a closed chain the
 * last side joins the first. Sides on one spot count as their neighbours; a single spot stays.
 */
export const parallelCorners = <Space extends string>(
  points: readonly Point<Space>[],
  off: number,
  how: 'closed' | 'open',
): Point<Space>[] => {
  const round = how === 'closed';
  const next = (n: number): Point<Space> | undefined =>
    points[n + 1] ?? (round ? points[0] : undefined);
  const sides = points.map((point, n) => {
    const to = next(n);
    const way = to === undefined ? null : unitVector(point, to);
    return way === null ? null : perpendicular(way);
  });
  return points.map((point, n) => {
    const before = sides[n - 1] ?? (round ? (sides.at(n - 1) ?? null) : null);
    const own = [before, sides[n] ?? null].filter((side) => side !== null);
    return cornerAt(point, own, off);
  });
};
