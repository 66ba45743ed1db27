import type { Primitive } from '../../drawing/primitive.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { unitVector } from '../../geometry/unitVector.ts';

/** A band like a highlighter's, one piece for each side of a path, `half` inches to either side. */
export const bandAlong = (points: readonly SitePoint[], half: number): Primitive[] =>
  points.slice(1).flatMap((end, n): Primitive[] => {
    const start = points[n];
    const way = start === undefined ? null : unitVector(start, end);
    if (start === undefined || way === null) return [];
    const [x, y] = [-way.y * half, way.x * half];
    const corners = [
      { x: start.x + x, y: start.y + y },
      { x: end.x + x, y: end.y + y },
      { x: end.x - x, y: end.y - y },
      { x: start.x - x, y: start.y - y },
    ];
    return [{ kind: 'area', points: corners, ink: 'selected', opacity: 0.3, hatch: 'none' }];
  });
