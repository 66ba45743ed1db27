import type { StraightPlan } from '../../geometry/straightPlan.ts';
import type { LaidPicture } from '../../geometry/shownGround.ts';
import type { PictureId } from '../../site/ids.ts';
import type { Parsed } from '../../units/parsed.ts';

/** What is asked of the worker that decodes pictures away from the screen. */
export type PictureCall =
  /** A file that was brought: what it is, and what to keep of it. */
  | { readonly do: 'take'; readonly file: Blob }
  /** A page that was drawn, and the file and number that it has there. */
  | {
      readonly do: 'take page';
      readonly page: ImageBitmap;
      readonly file: Blob;
      readonly n: number;
    }
  /** Its pixels, at most so many on its longer side. */
  | { readonly do: 'show'; readonly picture: Blob; readonly longest: number }
  /** Its pixels as they lie on the ground. */
  | {
      readonly do: 'straighten';
      readonly picture: Blob;
      readonly laid: LaidPicture;
      readonly longest: number;
    };

/** A picture that was taken from a file: how large it is as it is seen, and what is kept of it. */
export interface Taken {
  readonly id: PictureId;
  readonly width: number;
  readonly height: number;
  readonly kept: Blob;
}

/** Pixels to be painted; of a straightened picture with how they lie. */
export interface Bitmap {
  readonly bitmap: ImageBitmap;
  readonly plan: StraightPlan | null;
}

/** An answer to a call, by the number of the call. */
export interface PictureAnswer {
  readonly number: number;
  readonly answer: Parsed<Taken | Bitmap>;
}
