import type { SitePoint } from '../geometry/point.ts';
import type { Projective } from '../geometry/projective.ts';

/** A picture as it lies under the drawing. */
export interface UnderPicture {
  /** Its pixels; null while they are not at hand: then a frame with `words` is in its place. */
  readonly bitmap: CanvasImageSource | null;
  /** From pixels of the bitmap to inches of the ground; it keeps parallels. */
  readonly toGround: Projective;
  /** The ground that it shows. */
  readonly outline: readonly SitePoint[];
  /** How much of it shows: 0 nothing, 1 all. */
  readonly shows: number;
  /** One line a text; all of them in the middle of the frame. */
  readonly words: readonly string[];
}
