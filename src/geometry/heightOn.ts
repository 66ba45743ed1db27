import { located } from './located.ts';
import type { SitePoint } from './point.ts';
import type { Triangulation } from './triangulated.ts';

/**
 * The height of a triangulated surface at a place on the ground, in the unit of `heights`, which
 * has one for each point: linear within each triangle, that of the point itself at a point. Null
 * outside of the triangles.
 */
export const heightOn = (
  mesh: Triangulation,
  heights: readonly number[],
  at: SitePoint,
): number | null => {
  const found = located(mesh, at);
  if (found === null) return null;
  const corners = mesh.triangles[found.triangle] ?? [];
  return corners.reduce((sum, n, k) => sum + (heights[n] ?? NaN) * (found.shares[k] ?? 0), 0);
};
