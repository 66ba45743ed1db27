import type { PicturePoint, SitePoint } from './point.ts';

/**
 * A point of a picture, `u` to the right and `v` down in its pixels, and the point of the ground that
 * it shows, inches.
 */
export interface Tie {
  readonly u: number;
  readonly v: number;
  readonly x: number;
  readonly y: number;
}

/** A point of a picture tied to a point of the ground. */
export const tieOf = (point: PicturePoint, at: SitePoint): Tie => ({
  u: point.x,
  v: point.y,
  x: at.x,
  y: at.y,
});
