import type { Bounds } from './bounds.ts';
import type { Segment } from './segment.ts';

/**
 * Whether any of a segment lies inside of a box or on its edge: what of it lies between the box's sides,
 * cut side by side. Any unit, the same for both.
 */
export const segmentInBox = <Space extends string>(
  { start, end }: Segment<Space>,
  box: Bounds,
): boolean => {
  const sides = [
    [start.x, end.x - start.x, box.minX, box.maxX],
    [start.y, end.y - start.y, box.minY, box.maxY],
  ] as const;
  let [from, to] = [0, 1];
  for (const [at, way, low, high] of sides) {
    if (way === 0) {
      if (at < low || at > high) return false;
      continue;
    }
    const [one, other] = [(low - at) / way, (high - at) / way];
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from <= to;
};
