import { distance } from './distance.ts';
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

/** How far inside its nearest edge a place is, in inches; below 0 outside. */
const depthOf = ([a, b, c]: Corners, [toA, toB, toC]: Located['shares']): number =>
  Math.min(toA / distance(b, c), toB / distance(c, a), toC / distance(a, b));

const shared = (triangle: number, parts: Located['shares']): Located => {
  const [a, b, c] = [Math.max(0, parts[0]), Math.max(0, parts[1]), Math.max(0, parts[2])];
  const whole = a + b + c;
  return { triangle, shares: [a / whole, b / whole, c / whole] };
};

/** The triangle whose rim a place outside of all is nearest to, where it is within a spot. */
const onRim = (mesh: Triangulation, near: readonly number[], at: SitePoint): Located | null => {
  let [deepest, found]: [number, Located | null] = [-spot, null];
  for (const triangle of near) {
    const corners = cornersAt(mesh, triangle);
    const parts = partsAt(corners, at);
    const depth = depthOf(corners, parts);
    if (depth > deepest) [deepest, found] = [depth, shared(triangle, parts)];
  }
  return found;
};

/**
 * The triangle that a place on the ground is in, and the corners' shares in it. Null outside of all
 * of them; a place outside by less than 1/64 in is taken to be on the edge.
 */
export const located = (mesh: Triangulation, at: SitePoint): Located | null => {
  const near = trianglesNear(mesh.grid, { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y });
  for (const triangle of near) {
    const parts = partsAt(cornersAt(mesh, triangle), at);
    if (parts[0] >= 0 && parts[1] >= 0 && parts[2] >= 0) return shared(triangle, parts);
  }
  return onRim(mesh, near, at);
};
