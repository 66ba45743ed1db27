import { incircle } from 'robust-predicates';
import { beforeOf, nextOf } from './halfEdges.ts';
import type { HalfEdges } from './halfEdges.ts';
import type { SitePoint } from './point.ts';

/**
 * The same points with edges flipped until no triangle has the far corner of a neighbour in its
 * circle, by exact predicates. All triangles run counter-clockwise on the ground. What is on a
 * circle counts as outside, so that it comes to an end.
 */
export const legalized = (mesh: HalfEdges, points: readonly SitePoint[]): HalfEdges => {
  const [corners, twins] = [[...mesh.corners], [...mesh.twins]];
  const corner = (edge: number): number => corners[edge] ?? 0;
  const link = (edge: number, twin: number): void => {
    twins[edge] = twin;
    if (twin >= 0) twins[twin] = edge;
  };
  const isIllegal = (edge: number, twin: number): boolean => {
    const four = [edge, nextOf(edge), beforeOf(edge), beforeOf(twin)];
    const [a, b, c, d] = four.map((n) => points[corner(n)]);
    if (a === undefined || b === undefined || c === undefined || d === undefined) return false;
    return incircle(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y) > 0;
  };
  const open = corners.map((_, edge) => edge);
  for (let edge = open.pop(); edge !== undefined; edge = open.pop()) {
    const twin = twins[edge] ?? -1;
    if (twin < 0 || !isIllegal(edge, twin)) continue;
    const [before, twinBefore] = [beforeOf(edge), beforeOf(twin)];
    [corners[edge], corners[twin]] = [corner(twinBefore), corner(before)];
    link(edge, twins[twinBefore] ?? -1);
    link(twin, twins[before] ?? -1);
    link(before, twinBefore);
    open.push(edge, twin, nextOf(edge), nextOf(twin));
  }
  return { corners, twins };
};
