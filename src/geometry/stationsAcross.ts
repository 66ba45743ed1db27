import { boundsOf, expandBounds } from './bounds.ts';
import { cross } from './cross.ts';
import { distance } from './distance.ts';
import { dot } from './dot.ts';
import { subtract } from './subtract.ts';
import { spot } from './tolerance.ts';
import { trianglesNear } from './triangleGrid.ts';
import { unitVector } from './unitVector.ts';
import type { SitePoint } from './point.ts';
import type { Segment } from './segment.ts';
import type { Triangulation } from './triangulated.ts';

/** A point told by a segment: along it, and to its left. */
interface Beside {
  readonly along: number;
  readonly off: number;
}

const crossing = (a: Beside, b: Beside): number[] => {
  const corners = [a, b].filter(({ off }) => Math.abs(off) < spot).map(({ along }) => along);
  // an edge that lies along the way has no crossing but its ends
  if (corners.length === 2 || a.off < 0 === b.off < 0) return corners;
  return [...corners, a.along + ((b.along - a.along) * a.off) / (a.off - b.off)];
};

/**
 * Where a segment passes from one triangle into another or by a corner, in inches from its start:
 * rising, its two ends among them, none nearer to the next than 1/64 in. Between two of them a
 * surface on the triangles is straight. Only the start for a segment without length.
 */
export const stationsAcross = (
  mesh: Triangulation,
  segment: Segment<'site'>,
): readonly number[] => {
  const { start, end } = segment;
  const way = unitVector(start, end);
  const box = boundsOf([start, end]);
  if (way === null || box === null) return [0];
  const length = distance(start, end);
  const beside = (at: SitePoint | undefined): Beside => {
    const out = subtract(at ?? start, start);
    return { along: dot(out, way), off: cross(way, out) };
  };
  const found = trianglesNear(mesh.grid, expandBounds(box, spot)).flatMap((n) => {
    const corners = (mesh.triangles[n] ?? []).map((corner) => beside(mesh.points[corner]));
    return corners.flatMap((one, k) => crossing(one, corners[(k + 1) % 3] ?? one));
  });
  const stations = [0];
  for (const along of found.sort((a, b) => a - b)) {
    if (along - (stations.at(-1) ?? 0) >= spot && length - along >= spot) stations.push(along);
  }
  return [...stations, length];
};
