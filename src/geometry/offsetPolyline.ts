import { add } from './add.ts';
import { distance } from './distance.ts';
import { dot } from './dot.ts';
import { perpendicular } from './perpendicular.ts';
import { scale } from './scale.ts';
import { slack } from './tolerance.ts';
import { unitVector } from './unitVector.ts';
import type { Point } from './point.ts';

/** Where the parallel passes a corner: one mitred point, or two across a bevel. */
const join = <Space extends string>(
  corner: Point<Space>,
  sides: readonly [Point<Space>, Point<Space>],
  off: number,
  mitreLimit: number,
): Point<Space>[] => {
  const [before, after] = sides;
  const both = 1 + dot(before, after);
  // the mitre is √(2 / both) times as long as the offset
  if (2 > mitreLimit * mitreLimit * both) {
    return sides.map((side) => add(corner, scale(side, off)));
  }
  return [add(corner, scale(add(before, after), off / both))];
};

/**
 * The parallel to an open chain of points at a distance in the unit of the space, positive on the
 * side of `perpendicular` (on the ground: to the left of the way it runs). Corners are mitred
 * while the mitre is no longer than `mitreLimit` offsets, else bevelled. Points on one spot count
 * once; fewer than two different points give none. On the inside of a leg shorter than the mitre
 * the parallel crosses itself: it is not trimmed.
 */
export const offsetPolyline = <Space extends string>(
  points: readonly Point<Space>[],
  off: number,
  mitreLimit = 4,
): Point<Space>[] => {
  const apart: Point<Space>[] = [];
  for (const point of points) {
    const last = apart.at(-1);
    if (last === undefined || distance(last, point) > slack) apart.push(point);
  }
  const sides = apart.slice(1).flatMap((point, n) => {
    const way = unitVector(apart[n] ?? point, point);
    return way === null ? [] : [perpendicular(way)];
  });
  return apart.flatMap((point, n) => {
    const before = sides[n - 1] ?? sides[n];
    const after = sides[n] ?? sides[n - 1];
    if (before === undefined || after === undefined) return [];
    return join(point, [before, after], off, mitreLimit);
  });
};
