import type { Bounds } from '../geometry/bounds.ts';
import { groundBounds } from './groundBounds.ts';
import type { Primitive } from './primitive.ts';
import { toPaper, type Projection } from './projection.ts';

/** The upright rectangle on paper (inches, y down) of the ground that primitives stand on; null for none. */
export const primitiveBounds = (
  primitives: readonly Primitive[],
  projection: Projection,
): Bounds | null => {
  const ground = groundBounds(primitives);
  if (ground === null) return null;
  const least = toPaper(projection, { x: ground.minX, y: ground.maxY });
  const most = toPaper(projection, { x: ground.maxX, y: ground.minY });
  return { minX: least.x, minY: least.y, maxX: most.x, maxY: most.y };
};
