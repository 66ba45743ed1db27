import { bearing } from '../../geometry/bearing.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Radians } from '../../units/radians.ts';

/**
 * How far off a place may be: the standard error ellipse, one standard deviation along its axes. Two of
 * five places lie inside of it, in the long run.
 */
export interface Ellipse {
  readonly major: Inches;
  readonly minor: Inches;
  /** The direction of the longer axis, above -π/2 and at most π/2, counter-clockwise from east. */
  readonly bearing: Radians;
}

/** A symmetric matrix of two rows: variances and covariance along x and y, square inches. */
export interface Covariance {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** The direction in which a covariance is largest, a unit vector with x above 0, or 0 and y 1. */
export const majorAxis = ({ xx, xy, yy }: Covariance): SitePoint => {
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  return x > 1e-12 ? { x, y } : { x: 0, y: 1 };
};

/** Its two eigenvalues, the larger first; never below zero. */
export const spreads = ({ xx, xy, yy }: Covariance): readonly [number, number] => {
  const [middle, half] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  return [Math.max(0, middle + half), Math.max(0, middle - half)];
};

/** The ellipse of a covariance. */
export const ellipseOf = (covariance: Covariance): Ellipse => {
  const [large, small] = spreads(covariance);
  return {
    major: inches(Math.sqrt(large)),
    minor: inches(Math.sqrt(small)),
    bearing: bearing({ x: 0, y: 0 }, majorAxis(covariance)),
  };
};
