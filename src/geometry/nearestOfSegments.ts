import { nearestOnSegment } from './nearestOnSegment.ts';
import type { Point } from './point.ts';
import type { Segment } from './segment.ts';
import { segmentIntersection } from './segmentIntersection.ts';

/** Where the first of two segments comes nearest to the second, and how near, in the unit of the space. */
export interface NearestPlace<Space extends string> {
  readonly at: Point<Space>;
  readonly distance: number;
}

const nearer = <Space extends string>(
  a: NearestPlace<Space>,
  b: NearestPlace<Space>,
): NearestPlace<Space> => (b.distance < a.distance ? b : a);

/** Where a segment comes nearest to another, ends included; distance 0 where they cross or touch. */
export const nearestOfSegments = <Space extends string>(
  first: Segment<Space>,
  second: Segment<NoInfer<Space>>,
): NearestPlace<Space> => {
  const crossing = segmentIntersection(first, second);
  if (crossing !== null) return { at: crossing.point, distance: 0 };
  const own = [first.start, first.end].map((at) => ({
    at,
    distance: nearestOnSegment(at, second).distance,
  }));
  const others = [second.start, second.end].map((end) => {
    const { point, distance } = nearestOnSegment(end, first);
    return { at: point, distance };
  });
  return [...own, ...others].reduce(nearer);
};
