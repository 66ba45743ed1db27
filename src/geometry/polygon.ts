import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/** Ground inside a closed chain of points; the last joins the first and is not repeated. */
export type Polygon<Space extends string> = readonly Point<Space>[];

/** The edges of a polygon, in order, the closing one last; none for fewer than two points. */
export const edges = <Space extends string>(polygon: Polygon<Space>): Segment<Space>[] =>
  polygon.length < 2
    ? []
    : polygon.map((start, n) => ({ start, end: polygon[(n + 1) % polygon.length] ?? start }));
