import type { Bounds } from '../../geometry/bounds.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { PaperPoint } from '../../geometry/point.ts';

/**
 * The part of a segment inside bounds, as shares of the way from `a` to `b`; null where it misses
 * them. No bounds leave the whole segment.
 */
export const clippedShares = (
  a: PaperPoint,
  b: PaperPoint,
  bounds: Bounds | null,
): readonly [number, number] | null => {
  if (bounds === null) return [0, 1];
  let [first, last] = [0, 1];
  const sides = [
    [b.x - a.x, bounds.minX - a.x, bounds.maxX - a.x],
    [b.y - a.y, bounds.minY - a.y, bounds.maxY - a.y],
  ] as const;
  for (const [run, low, high] of sides) {
    if (run === 0) {
      if (low > 0 || high < 0) return null;
      continue;
    }
    first = Math.max(first, Math.min(low / run, high / run));
    last = Math.min(last, Math.max(low / run, high / run));
  }
  return first <= last ? [first, last] : null;
};

/** The part of a segment inside bounds as two points; null where it misses them. */
export const clippedSegment = (
  a: PaperPoint,
  b: PaperPoint,
  bounds: Bounds | null,
): readonly [PaperPoint, PaperPoint] | null => {
  const shares = clippedShares(a, b, bounds);
  return shares === null ? null : [lerp(a, b, shares[0]), lerp(a, b, shares[1])];
};
