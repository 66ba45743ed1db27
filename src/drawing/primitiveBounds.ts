import type { Bounds } from '../geometry/bounds.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Primitive } from './primitive.ts';
import { toPaper, type Projection } from './projection.ts';

/** The points that a primitive stands on; of what is round its centre. */
const standsOn = (primitive: Primitive): readonly SitePoint[] => {
  if ('points' in primitive) return primitive.points;
  return 'centre' in primitive ? [primitive.centre] : [primitive.at];
};

/** The upright rectangle on paper (inches, y down) of the ground that primitives stand on; null for none. */
export const primitiveBounds = (
  primitives: readonly Primitive[],
  projection: Projection,
): Bounds | null => {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const primitive of primitives) {
    const about = 'radius' in primitive ? primitive.radius : 0;
    for (const { x, y } of standsOn(primitive)) {
      west = Math.min(west, x - about);
      south = Math.min(south, y - about);
      east = Math.max(east, x + about);
      north = Math.max(north, y + about);
    }
  }
  if (west > east) return null;
  const least = toPaper(projection, { x: west, y: north });
  const most = toPaper(projection, { x: east, y: south });
  return { minX: least.x, minY: least.y, maxX: most.x, maxY: most.y };
};
