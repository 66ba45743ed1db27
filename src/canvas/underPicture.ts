import type { SitePoint } from '../geometry/point.ts';
import type { Projective } from '../geometry/projective.ts';

/** A picture as it lies under the drawing: its pixels, or a frame while they are not at hand. */
export type UnderPicture =
  | {
      readonly kind: 'pixels';
      readonly bitmap: CanvasImageSource;
      /** From pixels of the bitmap to inches of the ground; it keeps parallels. */
      readonly toGround: Projective;
      /** The ground within which it is painted; null for all of it. */
      readonly within: readonly SitePoint[] | null;
      /** How much of it shows: 0 nothing, 1 all. */
      readonly shows: number;
    }
  | {
      readonly kind: 'frame';
      readonly outline: readonly SitePoint[];
      /** Lines of text in the middle of the frame. */
      readonly words: readonly string[];
    };
