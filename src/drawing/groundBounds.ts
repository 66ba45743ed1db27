import type { Bounds } from '../geometry/bounds.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Primitive } from './primitive.ts';

interface Grown {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** Takes in what lies so far about a point, inches. */
const takeIn = (all: Grown, { x, y }: SitePoint, about: number): void => {
  all.minX = Math.min(all.minX, x - about);
  all.minY = Math.min(all.minY, y - about);
  all.maxX = Math.max(all.maxX, x + about);
  all.maxY = Math.max(all.maxY, y + about);
};

const takePrimitive = (all: Grown, primitive: Primitive): void => {
  if ('points' in primitive) {
    for (const point of primitive.points) takeIn(all, point, 0);
    return;
  }
  if ('centre' in primitive) takeIn(all, primitive.centre, primitive.radius);
  else takeIn(all, primitive.at, 0);
};

/** The ground that a drawing covers, its letters aside, inches; null for an empty one. */
export const groundBounds = (primitives: readonly Primitive[]): Bounds | null => {
  const all = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const primitive of primitives) takePrimitive(all, primitive);
  return all.minX > all.maxX ? null : all;
};
