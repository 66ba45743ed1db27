import type { SitePoint } from '../geometry/point.ts';
import type { Inches } from '../units/inches.ts';
import type { Origin } from './origin.ts';

/** How high fence may stand on some ground, inches over it: what one cannot see through, and open fence. */
export interface HeightLimits {
  readonly solid: Inches;
  readonly open: Inches;
}

/** A line, or the edge of ground, that a file has. */
export interface FoundPath {
  /** Its name in the file; may be empty. */
  readonly name: string;
  /** Neighbours lie on different spots; the last is not the first again. */
  readonly points: readonly SitePoint[];
  /**
   * How far the middle of each leg lies off its chord, inches, left of the way above zero, 0 for a
   * straight one; as many as there are points, the last for the leg that closes it.
   */
  readonly bows: readonly number[];
  readonly closed: boolean;
  /** How high fence may stand in it, inches over the ground, where the file says so. */
  readonly limits?: HeightLimits;
}

/** A point that a file has: its name or text, and its height in inches where it has one. */
export interface FoundPoint {
  readonly name: string;
  readonly at: SitePoint;
  readonly z: Inches | null;
}

/** Things of one sort on one layer of a file: they are chosen together. */
export type FoundGroup = {
  /** No other group of the file has it. */
  readonly key: string;
  readonly layer: string;
  /** Its layer is off or frozen in the file: whoever drew it did not show it. */
  readonly hidden?: boolean;
} & (
  | { readonly shape: 'areas' | 'holes' | 'lines'; readonly paths: readonly FoundPath[] }
  | { readonly shape: 'points' | 'heights' | 'texts'; readonly points: readonly FoundPoint[] }
);

export type FoundShape = FoundGroup['shape'];

/** One thing of a file that cannot be brought: where in the file it stands, and why. */
export interface FoundRefusal {
  readonly where: string;
  readonly reason: string;
}

/** What a file has that can stand on a site, in inches, x east, y north. */
export interface Found {
  readonly groups: readonly FoundGroup[];
  /** What was taken for granted or changed on the way, a line each. */
  readonly told: readonly string[];
  readonly refused: readonly FoundRefusal[];
  /** Where on earth the point 0, 0 is; null where the file does not say. */
  readonly origin: Origin | null;
}
