import { distance } from './distance.ts';
import { lerp } from './lerp.ts';
import { lineIntersection } from './lineIntersection.ts';
import { slack } from './tolerance.ts';
import type { Crossing } from './lineIntersection.ts';
import type { Segment } from './segment.ts';

/** A share brought back to 0 to 1 if it is outside by rounding only, else null. */
const within = (share: number, segment: Segment<string>): number | null => {
  // as a length, since a share that counts in a segment of next to no length overflows
  const over = Math.max(-share, share - 1) * distance(segment.start, segment.end);
  if (over > slack) return null;
  return Math.min(1, Math.max(0, share));
};

/**
 * Where two segments cross or touch, shares 0 to 1. Null when they miss each other, and when they
 * are parallel, even if they lie on each other.
 */
export const segmentIntersection = <Space extends string>(
  first: Segment<Space>,
  second: Segment<NoInfer<Space>>,
): Crossing<Space> | null => {
  const crossing = lineIntersection(first, second);
  if (crossing === null) return null;
  const alongFirst = within(crossing.alongFirst, first);
  const alongSecond = within(crossing.alongSecond, second);
  if (alongFirst === null || alongSecond === null) return null;
  return { point: lerp(first.start, first.end, alongFirst), alongFirst, alongSecond };
};
