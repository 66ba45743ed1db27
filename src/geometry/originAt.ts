import { localPlane, type PlaceOnEarth } from './localPlane.ts';
import type { SitePoint } from './point.ts';

/**
 * Where on earth 0, 0 has to be so that a place comes to lie at a point of the ground (inches). The plane
 * about one origin is turned a little against that about the next; within ten miles three steps bring
 * the place to its point within a hair.
 */
export const originAt = (place: PlaceOnEarth, at: SitePoint): PlaceOnEarth => {
  let origin = localPlane(place).toEarth({ x: -at.x, y: -at.y });
  for (let step = 0; step < 3; step++) {
    const plane = localPlane(origin);
    const { x, y } = plane.toSite(place);
    origin = plane.toEarth({ x: x - at.x, y: y - at.y });
  }
  return origin;
};
