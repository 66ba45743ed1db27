import { nearestOnSegment } from './nearestOnSegment.ts';
import { spot } from './tolerance.ts';
import { trianglesNear } from './triangleGrid.ts';
import type { SitePoint } from './point.ts';
import type { Triangulation } from './triangulated.ts';

/** A triangle and the share that each of its corners has in a place of it; they add up to 1. */
export interface Located {
  readonly triangle: number;
  readonly shares: readonly [number, number, number];
}

type Corners = readonly [SitePoint, SitePoint, SitePoint];

/** The corners of a triangle of a triangulation. */
export const cornersAt = ({ points, triangles }: Triangulation, triangle: number): Corners => {
  const [i, j, k] = triangles[triangle] ?? [-1, -1, -1];
  const [a, b, c] = [points[i], points[j], points[k]];
  if (a === undefined || b === undefined || c === undefined) {
    throw new RangeError(`triangle ${triangle}: expected one of ${triangles.length}`);
  }
  return [a, b, c];
};

/** Twice the signed area of a triangle; above 0 when it runs counter-clockwise on the ground. */
const doubleArea = (a: SitePoint, b: SitePoint, c: SitePoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** What each corner's share is in proportion to, below 0 beyond the edge across from it. */
const partsAt = ([a, b, c]: Corners, at: SitePoint): Located['shares'] => [
  doubleArea(at, b, c),
  doubleArea(at, c, a),
  doubleArea(at, a, b),
];

/** The nearest place of some triangles to one outside of them, where it is within a spot. */
const onRim = (mesh: Triangulation, near: readonly number[], at: SitePoint): Located | null => {
  let [least, found]: [number, Located | null] = [spot, null];
  for (const triangle of near) {
    const corners = cornersAt(mesh, triangle);
    for (const [n, start] of corners.entries()) {
      const next = (n + 1) % 3;
      const edge = { start, end: corners[next] ?? start };
      const { distance, along } = nearestOnSegment(at, edge);
      if (distance >= least) continue;
      const share = (k: number): number => (k === n ? 1 - along : k === next ? along : 0);
      [least, found] = [distance, { triangle, shares: [share(0), share(1), share(2)] }];
    }
  }
  return found;
};

/**
 * The triangle that a place on the ground is in, and the corners' shares in it. Null outside of all
 * of them; a place outside by less than 1/64 in is taken to be at the nearest of an edge.
 */
export const located = (mesh: Triangulation, at: SitePoint): Located | null => {
  const near = trianglesNear(mesh.grid, { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y });
  for (const triangle of near) {
    const parts = partsAt(cornersAt(mesh, triangle), at);
    if (parts.some((part) => part < 0)) continue;
    const whole = parts[0] + parts[1] + parts[2];
    return { triangle, shares: [parts[0] / whole, parts[1] / whole, parts[2] / whole] };
  }
  return onRim(mesh, near, at);
};
