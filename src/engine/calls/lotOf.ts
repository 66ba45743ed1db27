import type { SitePoint } from '../../geometry/point.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { CallCurve, Course } from './course.ts';

interface LatDep {
  readonly lat: number;
  readonly dep: number;
}

/** A course after balancing, with the working of its area; inches and square inches. */
export interface BalancedCourse extends LatDep {
  /** What was added to its latitude and departure. */
  readonly correction: LatDep;
  readonly azimuth: Radians;
  /** Straight from its start to its end. */
  readonly length: Inches;
  /** With the central angle that was told; its radius follows its chord. */
  readonly curve: CallCurve | null;
  readonly to: string;
  /** Double meridian distance, and it times the latitude: twice the area beside the course. */
  readonly dmd: number;
  readonly doubleArea: number;
  /** Between the curve and its chord: above zero where it adds to the lot; 0 for a straight course. */
  readonly segment: number;
}

/** What the calls enclose once they are balanced. */
export interface Lot {
  readonly courses: readonly BalancedCourse[];
  /** Where each course begins; the point of beginning is 0, 0. */
  readonly corners: readonly SitePoint[];
  /** Square inches, curves counted. */
  readonly area: number;
}

const whole = 2 * Math.PI;

const balancedCurve = (curve: CallCurve, chord: number): CallCurve => {
  const half = curve.delta / 2;
  const radius = chord / (2 * Math.sin(half));
  return {
    ...curve,
    radius: inches(radius),
    arc: inches(radius * curve.delta),
    chord: inches(chord),
    tangent: curve.tangent === null ? null : inches(radius * Math.tan(half)),
  };
};

/** Between a curve and its chord, square inches: R²/2 (Δ − sin Δ); above zero where it lies left of it. */
const segmentOf = (curve: CallCurve | null): number => {
  if (curve === null) return 0;
  const { radius, delta, side } = curve;
  return ((side === 'left' ? 1 : -1) * radius * radius * (delta - Math.sin(delta))) / 2;
};

type Walked = Course & LatDep;
type Balanced = Omit<BalancedCourse, 'dmd' | 'doubleArea' | 'segment'>;

const balanced = (course: Walked, correction: LatDep): Balanced => {
  const lat = course.lat + correction.lat;
  const dep = course.dep + correction.dep;
  const length = inches(Math.hypot(lat, dep));
  const { curve, to } = course;
  return {
    lat,
    dep,
    correction,
    azimuth: radians((Math.atan2(dep, lat) + whole) % whole),
    length,
    curve: curve === null ? null : balancedCurve(curve, length),
    to,
  };
};

/** Double meridian distances and what lies beside each course; counter-clockwise above zero. */
const measured = (courses: readonly Balanced[]): readonly BalancedCourse[] => {
  let [dmd, before] = [0, 0];
  return courses.map((course) => {
    dmd += before + course.dep;
    before = course.dep;
    return { ...course, dmd, doubleArea: dmd * course.lat, segment: segmentOf(course.curve) };
  });
};

const cornersOf = (courses: readonly LatDep[]): readonly SitePoint[] => {
  let [x, y] = [0, 0];
  return courses.map(({ lat, dep }) => {
    const corner = { x, y };
    [x, y] = [x + dep, y + lat];
    return corner;
  });
};

/**
 * Closes the courses of a lot by the compass rule (Bowditch): each takes of the misclosure, turned round,
 * what its length is of the lengths of all, curves by their chords. The area is that by double meridian
 * distances, and the segments between curves and chords.
 */
export const lotOf = (courses: readonly Walked[], off: LatDep): Lot => {
  const total = sum(courses.map(({ length }) => length));
  const closed = measured(
    courses.map((course) => {
      const share = -course.length / total;
      return balanced(course, { lat: share * off.lat, dep: share * off.dep });
    }),
  );
  const area = closed.reduce((all, { doubleArea, segment }) => all + doubleArea / 2 + segment, 0);
  const way = area < 0 ? -1 : 1;
  return {
    courses: closed.map((course) => ({ ...course, segment: way * course.segment + 0 })),
    corners: cornersOf(closed),
    area: Math.abs(area),
  };
};
