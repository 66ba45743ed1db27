import type { SitePoint } from '../geometry/point.ts';
import type { MarkId } from '../site/ids.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';
import type { SnapLine } from './snapLine.ts';
import type { Typed } from './typed.ts';

/** Where the hand points, and what the point is wanted for. */
export interface Aim {
  readonly at: SitePoint;
  /** How far from the point a thing still counts as touched. */
  readonly reach: Inches;
  /** True while snapping is turned off. */
  readonly free: boolean;
  /** The start of the piece being drawn; null where there is none. */
  readonly from: SitePoint | null;
  /** The direction of the piece before it. */
  readonly last: Radians | null;
  readonly typed: Typed;
  /** Marks not to snap to, nor to what is drawn from them: the start, or those that move along. */
  readonly except: readonly MarkId[];
  /** Lines to be drawn onto that the site does not have. */
  readonly also: readonly SnapLine[];
}
