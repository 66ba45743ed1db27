import type { Inches } from '../../units/inches.ts';
import type { Radians } from '../../units/radians.ts';
import type { CurveDegree } from './curveDegree.ts';
import type { CurveGiven } from './solveCurve.ts';

/** What a call tells of a curve and of how it lies. Directions are clockwise from north. */
export interface CurveTold {
  readonly given: CurveGiven;
  /** Where its radius follows from it and is not told. */
  readonly degree: CurveDegree | null;
  readonly side: 'left' | 'right' | null;
  /** The way in which its hollow side lies, as `concave northwesterly`. */
  readonly concave: Radians | null;
  readonly chord: Radians | null;
  /** From its start to its centre. */
  readonly radial: Radians | null;
  /** Of its tangent at its start. */
  readonly tangent: Radians | null;
  readonly joins: 'tangent' | 'not tangent' | 'untold';
}

interface Rest {
  /** What of the call was not needed to draw it and may be worth a look, as it was written. */
  readonly unused: readonly string[];
  /** What of it is taken for granted, a line each; each lacks its subject. */
  readonly doubts: readonly string[];
  /** Where in its text what describes its end begins. */
  readonly end: number;
}

/** One call as it is told, before what the calls before it say of it. */
export type Call = Rest &
  (
    | {
        readonly kind: 'straight';
        /** Clockwise from north. */
        readonly azimuth: Radians;
        readonly length: Inches;
        /** What its end says of the curve that begins there. */
        readonly next: CurveTold | null;
      }
    | { readonly kind: 'curve'; readonly told: CurveTold }
  );
