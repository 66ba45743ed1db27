import { cross } from './cross.ts';
import { distance } from './distance.ts';
import { subtract } from './subtract.ts';
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
  const [a, b, c] = (triangles[triangle] ?? []).map((n) => points[n]);
  if (a === undefined || b === undefined || c === undefined) {
    throw new RangeError(`triangle ${triangle}: expected one of ${triangles.length}`);
  }
  return [a, b, c];
};

/** How far inside its nearest edge a place is, below 0 outside, and the shares of the corners. */
const insideOf = ([a, b, c]: Corners, at: SitePoint) => {
  const [toA, toB, toC] = [subtract(a, at), subtract(b, at), subtract(c, at)];
  const areas = [cross(toB, toC), cross(toC, toA), cross(toA, toB)] as const;
  const depth = Math.min(
    areas[0] / distance(b, c),
    areas[1] / distance(c, a),
    areas[2] / distance(a, b),
  );
  return { depth, areas };
};

/**
 * The triangle that a place on the ground is in, and the corners' shares in it. Null outside of all
 * of them; a place outside by less than 1/64 in is taken to be on the edge.
 */
export const located = (mesh: Triangulation, at: SitePoint): Located | null => {
  const box = { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y };
  let best = { depth: -Infinity, triangle: -1, areas: [0, 0, 0] as readonly number[] };
  for (const triangle of trianglesNear(mesh.grid, box)) {
    const inside = insideOf(cornersAt(mesh, triangle), at);
    if (inside.depth > best.depth) best = { triangle, ...inside };
  }
  if (best.depth <= -spot) return null;
  const [a = 0, b = 0, c = 0] = best.areas.map((area) => Math.max(0, area));
  const whole = a + b + c;
  return { triangle: best.triangle, shares: [a / whole, b / whole, c / whole] };
};
