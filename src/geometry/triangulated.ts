import { cross } from './cross.ts';
import { distance } from './distance.ts';
import { firstOnSpot } from './firstOnSpot.ts';
import { beforeOf, nextOf } from './halfEdges.ts';
import { legalized } from './legalized.ts';
import { subtract } from './subtract.ts';
import { sweptMesh } from './sweptMesh.ts';
import { spot } from './tolerance.ts';
import { triangleGrid } from './triangleGrid.ts';
import type { HalfEdges } from './halfEdges.ts';
import type { SitePoint } from './point.ts';
import type { TriangleGrid } from './triangleGrid.ts';

/** Three indexes of points, counter-clockwise on the ground. */
export type Triangle = readonly [number, number, number];

/** Points on the ground joined to triangles, none of which has another point in its circle. */
export interface Triangulation {
  readonly points: readonly SitePoint[];
  /** For each point the one that counts at its spot: itself, or an earlier one on the same spot. */
  readonly counts: readonly number[];
  readonly triangles: readonly Triangle[];
  /** The edges of one triangle only, with the triangles on their left. */
  readonly rim: readonly (readonly [number, number])[];
  /** Where to look for a triangle; null where there is none. */
  readonly grid: TriangleGrid | null;
}

/** True where all points lie within a spot of one straight line, or on one place. */
const onOneLine = (points: readonly SitePoint[]): boolean => {
  const [start] = points;
  if (start === undefined) return true;
  const end = points.reduce(
    (far, point) => (distance(start, point) > distance(start, far) ? point : far),
    start,
  );
  const [way, long] = [subtract(end, start), distance(start, end)];
  return points.every((point) => Math.abs(cross(way, subtract(point, start))) <= spot * long);
};

/** True where an edge is the longest of its triangle and the third corner within a spot of it. */
const isSliver = ({ corners }: HalfEdges, points: readonly SitePoint[], edge: number): boolean => {
  const [a, b, c] = [edge, nextOf(edge), beforeOf(edge)].map((n) => points[corners[n] ?? -1]);
  if (a === undefined || b === undefined || c === undefined) return false;
  const long = distance(a, b);
  const area = cross(subtract(b, a), subtract(c, a));
  return area < spot * long && long >= distance(b, c) && long >= distance(c, a);
};

/**
 * The triangles that are left when slivers are taken off the rim, one after the other. Shots along
 * the line of a fence are bent by a hair of rounding; an edge of the rim that passes the middle one
 * by would lose its height. No shot is lost: its other edges stay in triangles.
 */
const withoutSlivers = (mesh: HalfEdges, points: readonly SitePoint[]): boolean[] => {
  const { corners, twins } = mesh;
  const left = Array.from({ length: corners.length / 3 }, () => true);
  const open = corners.map((_, edge) => edge).filter((edge) => (twins[edge] ?? -1) < 0);
  for (let edge = open.pop(); edge !== undefined; edge = open.pop()) {
    const triangle = Math.floor(edge / 3);
    const inner = [nextOf(edge), beforeOf(edge)].map((side) => twins[side] ?? -1);
    if (!inner.every((twin) => left[Math.floor(twin / 3)] === true)) continue;
    if (left[triangle] !== true || !isSliver(mesh, points, edge)) continue;
    left[triangle] = false;
    open.push(...inner);
  }
  return left;
};

/**
 * Joins points on the ground (inches) to triangles by Delaunay's rule. Of points on one spot the
 * first counts. Fewer than three, or all on one line to within 1/64 in, give no triangle. Where
 * four lie on one circle either pair of triangles may come.
 */
export const triangulate = (points: readonly SitePoint[]): Triangulation => {
  const counts = firstOnSpot(points);
  const counting = counts.filter((first, n) => first === n);
  const flat = onOneLine(counting.flatMap((n) => points[n] ?? []));
  const mesh = legalized(sweptMesh(points, flat ? [] : counting), points);
  const left = withoutSlivers(mesh, points);
  const point = (edge: number): number => mesh.corners[edge] ?? 0;
  const edges = left.flatMap((stays, n) => (stays ? [3 * n, 3 * n + 1, 3 * n + 2] : []));
  const triangles = left.flatMap((stays, n): Triangle[] =>
    stays ? [[point(3 * n), point(3 * n + 1), point(3 * n + 2)]] : [],
  );
  const rim = edges
    .filter((edge) => left[Math.floor((mesh.twins[edge] ?? -1) / 3)] !== true)
    .map((edge) => [point(edge), point(nextOf(edge))] as const);
  const corners = triangles.map((three) => three.flatMap((n) => points[n] ?? []));
  return { points, counts, triangles, rim, grid: triangleGrid(corners) };
};
