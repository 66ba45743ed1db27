import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Places } from './rows.ts';

/** How marks can move together, to the first order: a small move of each, inches; the others stay. */
export type Motion = ReadonlyMap<MarkId, SitePoint>;

const none: SitePoint = { x: 0, y: 0 };

/** How a mark moves in a motion. */
export const moveOf = (motion: Motion, id: MarkId): SitePoint => motion.get(id) ?? none;

/** Two marks that are not on one spot. */
export type Base = readonly [MarkId, MarkId];

/** What two moves may differ by from rounding, as a share of the longest of their motion. */
export const hair = 1e-6;

/**
 * How a place would go along with two marks in a motion, as if it were on one board with them: a shift
 * and a turn. Null where the two move to or from each other, or are on one spot.
 */
export const boardOf = (
  motion: Motion,
  [a, b]: Base,
  places: Places,
): ((at: SitePoint) => SitePoint) | null => {
  const [from, to] = [places.get(a) ?? none, places.get(b) ?? none];
  const [way, long] = [subtract(to, from), distance(from, to)];
  if (long < spot) return null;
  const [shift, other] = [moveOf(motion, a), moveOf(motion, b)];
  const by = subtract(other, shift);
  if (Math.abs(dot(by, way)) > hair * long) return null;
  const turn = (way.x * by.y - way.y * by.x) / long ** 2;
  return ({ x, y }) => ({
    x: shift.x - turn * (y - from.y),
    y: shift.y + turn * (x - from.x),
  });
};

/** The moves of a mark in each motion, less how it would go along with a base; its own where there is none. */
export const movesBeside = (
  motions: readonly Motion[],
  id: MarkId,
  base: Base | null,
  places: Places,
): SitePoint[] => {
  const at = places.get(id) ?? none;
  return motions.map((motion) => {
    const board = base === null ? null : boardOf(motion, base, places);
    return subtract(moveOf(motion, id), board === null ? none : board(at));
  });
};
