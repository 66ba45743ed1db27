import type { SitePoint } from '../../geometry/point.ts';
import type { Piece } from '../../geometry/throughCapsule.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Ground } from './groundOf.ts';
import { heightAt } from './heightAt.ts';

/** Where a leaf comes nearest to the ground; lengths in inches. */
export interface LowPoint {
  /** Bottom less ground: below 0 the leaf would be in the ground by so much. */
  readonly clearance: Inches;
  readonly at: SitePoint;
  readonly ground: Inches;
  readonly bottom: Inches;
  /** How far the leaf has moved when its bottom is over that place: radians turned from closed,
   * or inches rolled. */
  readonly moved: number;
}

/** The room under a leaf through its whole movement. */
export interface LeafClearance {
  /** Over known ground; null where none of the movement is. */
  readonly lowest: LowPoint | null;
  /** The parts of the movement, as `moved` counts it, in which the leaf is not wholly over ground
   * that the shots describe. */
  readonly unknown: readonly Piece[];
}

/** A place that the bottom of a leaf passes over. */
export interface Passed {
  readonly at: SitePoint;
  readonly bottom: number;
  readonly moved: number;
}

/** The lowest of some places that a leaf passes over, those outside of the shots left out. */
export const lowestOf = (ground: Ground, places: readonly Passed[]): LowPoint | null => {
  let lowest: LowPoint | null = null;
  for (const { at, bottom, moved } of places) {
    const height = heightAt(ground, at);
    if (height === null) continue;
    const clearance = inches(bottom - height);
    if (lowest !== null && clearance >= lowest.clearance) continue;
    lowest = { clearance, at, ground: height, bottom: inches(bottom), moved };
  }
  return lowest;
};

/**
 * The parts of a movement in which something is not known, when that can change at some places of
 * it only: each part between two of these is judged by its middle; neighbours are joined. Of no
 * movement the one place is a part.
 */
export const unknownParts = (
  changes: readonly number[],
  whole: number,
  isKnown: (moved: number) => boolean,
): Piece[] => {
  if (whole === 0) return isKnown(0) ? [] : [{ from: 0, to: 0 }];
  const inside = changes.filter((moved) => moved > 0 && moved < whole);
  const stops = [0, ...inside.toSorted((a, b) => a - b), whole];
  const parts: Piece[] = [];
  stops.slice(1).forEach((to, n) => {
    const from = stops[n] ?? 0;
    if (to <= from || isKnown((from + to) / 2)) return;
    const last = parts.at(-1);
    if (last?.to === from) parts.splice(-1, 1, { from: last.from, to });
    else parts.push({ from, to });
  });
  return parts;
};
