import { distance } from './distance.ts';
import { dot } from './dot.ts';
import { lerp } from './lerp.ts';
import { subtract } from './subtract.ts';
import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/** Where a segment comes nearest to a point, and how near, in the unit of the space. */
export interface Nearest<Space extends string> {
  readonly point: Point<Space>;
  /** The share of the way from the segment's start, 0 to 1. */
  readonly along: number;
  readonly distance: number;
}

/** The nearest point of a segment, its ends included; its start when the segment has no length. */
export const nearestOnSegment = <Space extends string>(
  point: Point<Space>,
  { start, end }: Segment<NoInfer<Space>>,
): Nearest<Space> => {
  const way = subtract(end, start);
  const squared = dot(way, way);
  const share = squared === 0 ? 0 : dot(subtract(point, start), way) / squared;
  const along = Math.min(1, Math.max(0, share));
  const nearest = lerp(start, end, along);
  return { point: nearest, along, distance: distance(point, nearest) };
};
