import type { Inches } from '../../units/inches.ts';
import type { Radians } from '../../units/radians.ts';

/** A circular curve as plats tell one; lengths in inches. */
export interface CallCurve {
  readonly side: 'left' | 'right';
  readonly radius: Inches;
  /** The central angle, above zero and under a whole turn. */
  readonly delta: Radians;
  readonly arc: Inches;
  readonly chord: Inches;
  /** From either end to where the tangents meet; null from half a turn on, where they do not. */
  readonly tangent: Inches | null;
}

/** One side of what calls go round, straight or curved. */
export interface Course {
  /** Clockwise from north, from 0 to under a whole turn; of a curve that of its chord. */
  readonly azimuth: Radians;
  /** Straight from its start to its end, above zero. */
  readonly length: Inches;
  readonly curve: CallCurve | null;
  /** What is at its end, such as `iron pin`; empty where nothing is told. */
  readonly to: string;
}

/** The direction in which a course leaves its end: that of the tangent there. Clockwise from north. */
export const azimuthOut = ({ azimuth, curve }: Course): number =>
  curve === null ? azimuth : azimuth + (curve.side === 'right' ? 1 : -1) * (curve.delta / 2);
