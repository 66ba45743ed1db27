import { boundsOf, boundsOverlap } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { edges } from '../../geometry/polygon.ts';
import { segmentIntersection } from '../../geometry/segmentIntersection.ts';

/**
 * The first two sides of a lot that cross or touch where they should not, counted from 0, by the chords of
 * its curves; null where none do. Neighbours share their corner and are not looked at.
 */
export const crossing = (corners: readonly SitePoint[]): readonly [number, number] | null => {
  const sides = edges(corners).map((side) => ({ side, box: boundsOf([side.start, side.end]) }));
  for (const [n, one] of sides.entries()) {
    // the last side is a neighbour of the first
    const to = n === 0 ? sides.length - 1 : sides.length;
    for (let m = n + 2; m < to; m += 1) {
      const other = sides[m];
      if (other?.box == null || one.box === null || !boundsOverlap(one.box, other.box)) continue;
      if (segmentIntersection(one.side, other.side) !== null) return [n, m];
    }
  }
  return null;
};
