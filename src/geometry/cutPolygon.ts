import { lerp } from './lerp.ts';
import type { Point } from './point.ts';
import { edges, type Polygon } from './polygon.ts';

/**
 * The part of a polygon on which `side` is zero or above, `side` being linear in x and y: one cut of
 * Sutherland and Hodgman (Reentrant polygon clipping, CACM 17, 1974). Whole where all of it is, empty
 * where none is; of a polygon that is not convex the parts hang together by edges without area.
 */
export const cutPolygon = <Space extends string>(
  polygon: Polygon<Space>,
  side: (point: Point<Space>) => number,
): Point<Space>[] =>
  edges(polygon).flatMap(({ start, end }) => {
    const [from, to] = [side(start), side(end)];
    if (from >= 0 && to >= 0) return [end];
    if (from < 0 && to < 0) return [];
    const at = lerp(start, end, from / (from - to));
    return to >= 0 ? [at, end] : [at];
  });
