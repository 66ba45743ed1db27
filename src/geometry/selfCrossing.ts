import type { Point } from './point.ts';
import type { Segment } from './segment.ts';
import { segmentIntersection } from './segmentIntersection.ts';

interface Side<Space extends string> extends Segment<Space> {
  readonly n: number;
  readonly low: number;
  readonly high: number;
}

/** Whether both ends of one lie on the same side of the line of the other, or next to it: then they do not cross. */
const misses = <Space extends string>(one: Side<Space>, { start, end }: Side<Space>): boolean => {
  const [dx, dy] = [one.end.x - one.start.x, one.end.y - one.start.y];
  const first = dx * (start.y - one.start.y) - dy * (start.x - one.start.x);
  const second = dx * (end.y - one.start.y) - dy * (end.x - one.start.x);
  return (first > 0 && second > 0) || (first < 0 && second < 0);
};

const inside = (share: number): boolean => share > 1e-9 && share < 1 - 1e-9;

/**
 * Where the sides of a closed ring cross each other: the first such point from the left, null where
 * none do. Corners that touch a side or each other, and sides that lie on each other, are no crossing.
 * The last corner is joined to the first.
 */
export const selfCrossing = <Space extends string>(
  ring: readonly Point<Space>[],
): Point<Space> | null => {
  const sides = ring
    .map((start, n): Side<Space> => {
      const end = ring[(n + 1) % ring.length] ?? start;
      return { n, start, end, low: Math.min(start.x, end.x), high: Math.max(start.x, end.x) };
    })
    .toSorted((a, b) => a.low - b.low);
  // only sides that share some of their width can cross; those that are passed are taken out in place
  const open: Side<Space>[] = [];
  for (const side of sides) {
    let kept = 0;
    for (const other of open) {
      if (other.high < side.low) continue;
      open[kept] = other;
      kept += 1;
      if (misses(side, other) || misses(other, side)) continue;
      const crossing = segmentIntersection(side, other);
      if (crossing !== null && inside(crossing.alongFirst) && inside(crossing.alongSecond)) {
        return crossing.point;
      }
    }
    open.length = kept;
    open.push(side);
  }
  return null;
};
