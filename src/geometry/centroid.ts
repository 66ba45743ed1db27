import { add } from './add.ts';
import { cross } from './cross.ts';
import { edges } from './polygon.ts';
import { scale } from './scale.ts';
import { subtract } from './subtract.ts';
import { slack } from './tolerance.ts';
import type { Point } from './point.ts';
import type { Polygon } from './polygon.ts';

const mean = <Space extends string>(points: Polygon<Space>, anchor: Point<Space>): Point<Space> => {
  const nothing: Point<Space> = { x: 0, y: 0 };
  const total = points.reduce((so, point) => add(so, subtract(point, anchor)), nothing);
  return add(anchor, scale(total, 1 / points.length));
};

/**
 * The balance point of a polygon's area; it may lie outside a hollow shape. The mean of the
 * points when they enclose no area, null when there are none.
 */
export const centroid = <Space extends string>(polygon: Polygon<Space>): Point<Space> | null => {
  const [anchor] = polygon;
  if (anchor === undefined) return null;
  let twice = 0;
  let weighed: Point<Space> = { x: 0, y: 0 };
  for (const edge of edges(polygon)) {
    const start = subtract(edge.start, anchor);
    const end = subtract(edge.end, anchor);
    const part = cross(start, end);
    twice += part;
    weighed = add(weighed, scale(add(start, end), part));
  }
  if (Math.abs(twice) <= slack) return mean(polygon, anchor);
  return add(anchor, scale(weighed, 1 / (3 * twice)));
};
