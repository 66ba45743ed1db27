import { nearestOnSegment } from './nearestOnSegment.ts';
import { edges } from './polygon.ts';
import { slack } from './tolerance.ts';
import type { Point } from './point.ts';
import type { Polygon } from './polygon.ts';
import type { Segment } from './segment.ts';

/** Whether a ray from the point along the x axis passes an edge; an upper end does not count. */
const passes = ({ x, y }: Point<string>, { start, end }: Segment<string>): boolean => {
  if (start.y > y === end.y > y) return false;
  return x < start.x + ((end.x - start.x) * (y - start.y)) / (end.y - start.y);
};

/**
 * Whether a polygon contains a point, by the even-odd rule: what is enclosed twice is outside.
 * The boundary, give or take rounding, is inside. Nothing lies in a polygon without points.
 */
export const contains = <Space extends string>(
  polygon: Polygon<Space>,
  point: Point<NoInfer<Space>>,
): boolean => {
  const around = edges(polygon);
  if (around.some((edge) => nearestOnSegment(point, edge).distance <= slack)) return true;
  return around.filter((edge) => passes(point, edge)).length % 2 === 1;
};
