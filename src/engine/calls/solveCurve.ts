import { inches, type Inches } from '../../units/inches.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { CallCurve } from './course.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a call tells of a curve; any two of them with a length among them make it. */
export interface CurveGiven {
  readonly radius?: Inches;
  readonly delta?: Radians;
  readonly arc?: Inches;
  readonly chord?: Inches;
  readonly tangent?: Inches;
}

type Measure = Omit<CallCurve, 'side'>;

/** Of a function that falls from `low` to `high`, where it comes down to a value. */
const whereFalls = (value: number, high: number, of: (x: number) => number): number => {
  let [from, to] = [0, high];
  for (let step = 0; step < 60; step += 1) {
    const middle = (from + to) / 2;
    if (of(middle) > value) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
};

/** Half the central angle and the radius of each pair that a call may tell; NaN where there is none. */
const halfAndRadius = (given: CurveGiven): readonly [half: number, radius: number] | null => {
  const { radius: r, delta, arc: l, chord: c, tangent: t } = given;
  const half = delta === undefined ? undefined : delta / 2;
  if (r !== undefined && half !== undefined) return [half, r];
  if (r !== undefined && l !== undefined) return [l / (2 * r), r];
  if (r !== undefined && c !== undefined) return [Math.asin(c / (2 * r)), r];
  if (r !== undefined && t !== undefined) return [Math.atan(t / r), r];
  if (half !== undefined && l !== undefined) return [half, l / (2 * half)];
  if (half !== undefined && c !== undefined) return [half, c / (2 * Math.sin(half))];
  if (half !== undefined && t !== undefined) return [half, t / Math.tan(half)];
  if (l !== undefined && c !== undefined) {
    const x = c < l ? whereFalls(c / l, Math.PI, (of) => Math.sin(of) / of) : NaN;
    return [x, l / (2 * x)];
  }
  if (c !== undefined && t !== undefined) {
    const x = Math.acos(c / (2 * t));
    return [x, t / Math.tan(x)];
  }
  if (l !== undefined && t !== undefined) {
    const x = l < 2 * t ? whereFalls(l / t, Math.PI / 2, (of) => (2 * of) / Math.tan(of)) : NaN;
    return [x, t / Math.tan(x)];
  }
  return null;
};

/**
 * A curve from what a call tells of it: L = RΔ, C = 2R sin Δ/2, T = R tan Δ/2 (Δ in radians), the
 * formulas of route surveying. Of more than two the radius with the central angle counts, then the
 * radius with the arc. A radius with a chord alone is the shorter of the two arcs.
 * @returns one line without its subject where too little is told or no curve has these.
 */
export const solveCurve = (given: CurveGiven): Parsed<Measure> => {
  const found = halfAndRadius(given);
  if (found === null) {
    const needed = phrase`two of radius, central angle, arc, chord and tangent length`;
    return unread(phrase`tells too little of its curve: expected ${needed}`);
  }
  const [half, radius] = found;
  const fits = half > 0 && half < Math.PI && radius > 0 && Number.isFinite(radius);
  if (!fits) return unread(phrase`has figures that no curve has: expected those of one circle`);
  return read({
    radius: inches(radius),
    delta: radians(2 * half),
    arc: inches(2 * half * radius),
    chord: inches(2 * radius * Math.sin(half)),
    tangent: half < Math.PI / 2 ? inches(radius * Math.tan(half)) : null,
  });
};
