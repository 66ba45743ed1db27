import { cross } from './cross.ts';
import { dot } from './dot.ts';
import { lerp } from './lerp.ts';
import { subtract } from './subtract.ts';
import { parallelSine } from './tolerance.ts';
import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/** Where two lines cross. */
export interface Crossing<Space extends string> {
  readonly point: Point<Space>;
  /** The share of the way from the first line's start to its end; outside 0 to 1 beyond them. */
  readonly alongFirst: number;
  /** The same on the second line. */
  readonly alongSecond: number;
}

/**
 * Where the endless lines through two segments cross. Null when they are parallel (also when they
 * are one line) or a segment has no length.
 */
export const lineIntersection = <Space extends string>(
  first: Segment<Space>,
  second: Segment<NoInfer<Space>>,
): Crossing<Space> | null => {
  const a = subtract(first.end, first.start);
  const b = subtract(second.end, second.start);
  const area = cross(a, b);
  if (Math.abs(area) <= parallelSine * Math.sqrt(dot(a, a) * dot(b, b))) return null;
  const apart = subtract(second.start, first.start);
  const alongFirst = cross(apart, b) / area;
  const alongSecond = cross(apart, a) / area;
  return { point: lerp(first.start, first.end, alongFirst), alongFirst, alongSecond };
};
