import type { SitePoint } from '../geometry/point.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';
import type { PictureWay } from './pictureWay.ts';

/**
 * What a hand does, in ground inches, whatever it holds: mouse, finger, pen or keys.
 * `reach` is how far from the point a thing still counts as touched.
 */
export type Input =
  | {
      readonly do: 'press' | 'move' | 'release';
      readonly at: SitePoint;
      readonly reach: Inches;
      /** True while the key is held that turns snapping off. */
      readonly free: boolean;
    }
  /** A length or a bearing typed for the piece being drawn; null leaves it to the pointer. */
  | { readonly do: 'type'; readonly length: Inches | null; readonly bearing: Radians | null }
  /** A height that is known before its place is, with the name of its point. */
  | { readonly do: 'offer'; readonly height: Inches; readonly name: string }
  /** The way in which points of the selected picture will say where it lies. */
  | { readonly do: 'begin'; readonly way: PictureWay }
  | { readonly do: 'nudge'; readonly x: Inches; readonly y: Inches }
  /** `finish` ends the chain, `close` joins it to its first mark, `back` takes the last mark off. */
  | { readonly do: 'finish' | 'close' | 'back' | 'leave' | 'erase' };
