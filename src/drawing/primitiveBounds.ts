import { boundsOf, type Bounds } from '../geometry/bounds.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Primitive } from './primitive.ts';
import { toPaper, type Projection } from './projection.ts';

/** The ground that a primitive is drawn on, as points; of round things the corners of a square around. */
const groundOf = (primitive: Primitive): readonly SitePoint[] => {
  if ('points' in primitive) return primitive.points;
  if (!('centre' in primitive)) return [primitive.at];
  const { centre, radius } = primitive;
  return [
    { x: centre.x - radius, y: centre.y - radius },
    { x: centre.x + radius, y: centre.y + radius },
  ];
};

/** The upright rectangle on paper (inches, y down) of the ground that primitives stand on; null for none. */
export const primitiveBounds = (
  primitives: readonly Primitive[],
  projection: Projection,
): Bounds | null =>
  boundsOf(primitives.flatMap((one) => groundOf(one).map((at) => toPaper(projection, at))));
