import type { Position } from '../../../engine/walk/readPosition.ts';
import type { LocalPlane, PlaceOnEarth } from '../../../geometry/localPlane.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { farthest } from '../../../geometry/tolerance.ts';
import { inches, type Inches } from '../../../units/inches.ts';

/** Where a walk is on the drawing, and how sure that is. */
export interface WalkPlace {
  readonly at: SitePoint;
  readonly origin: PlaceOnEarth;
  /** It is there 95 times in 100 within this. */
  readonly radius: Inches;
  /** How far it is from the place of the drawing where that is too far for a mark; else null. */
  readonly away: Inches | null;
}

/** Where a position is on a drawing whose 0, 0 is at a place on earth. */
export const walkPlace = (
  planeAbout: (origin: PlaceOnEarth) => LocalPlane,
  origin: PlaceOnEarth,
  position: Position,
): WalkPlace => {
  const at = planeAbout(origin).toSite(position);
  // half a turn of the earth away there is no plane that has both
  const away = Math.hypot(at.x, at.y);
  const isFar = !(Math.abs(at.x) <= farthest && Math.abs(at.y) <= farthest);
  return { at, origin, radius: position.radius, away: isFar ? inches(away) : null };
};
