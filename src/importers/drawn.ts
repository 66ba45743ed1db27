import type { SitePoint } from '../geometry/point.ts';
import type { FoundPath } from '../site/found.ts';
import type { Inches } from '../units/inches.ts';

/** One thing of a file as it was read, inches, x east, y north, before anything is checked or moved. */
export type Drawn = {
  readonly layer: string;
  /** Where in the file it stands, for the line that refuses it. */
  readonly where: string;
} & (
  | { readonly kind: 'path' | 'hole'; readonly path: FoundPath }
  | {
      readonly kind: 'point';
      readonly name: string;
      readonly at: SitePoint;
      readonly z: Inches | null;
    }
  | { readonly kind: 'text'; readonly name: string; readonly at: SitePoint }
);

/** The layer of all that is in a file without layers. */
export const wholeFile = 'All of it';
