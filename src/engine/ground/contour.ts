import type { SitePoint } from '../../geometry/point.ts';
import type { Inches } from '../../units/inches.ts';

/** A line of one height on the ground, with the higher ground on its left. */
export interface Contour {
  readonly z: Inches;
  readonly points: readonly SitePoint[];
  /** True where the last point joins the first, which is not repeated. */
  readonly closed: boolean;
}
