import type { SitePoint } from '../../geometry/point.ts';
import { slack } from '../../geometry/tolerance.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Calls } from './calls.ts';
import type { Course } from './course.ts';
import { finestReading } from './finestReading.ts';
import { lotOf, type Lot } from './lotOf.ts';

/** How far a course goes north and how far east, in inches; of a curve its chord. */
export interface LatDep {
  readonly lat: number;
  readonly dep: number;
}

/** By how much calls come out off the point where they began. */
export interface Misclosure extends LatDep {
  readonly length: Inches;
  /** From where they began to where they end, clockwise from north; null where that is one point. */
  readonly azimuth: Radians | null;
}

/** Calls walked along: what follows before and after they are balanced. */
export interface Traverse {
  readonly courses: readonly (Course & LatDep)[];
  /** From the point of beginning (0, 0) to where the last course ends: one more than there are courses. */
  readonly points: readonly SitePoint[];
  /** Along the courses, curves along the curve. */
  readonly perimeter: Inches;
  readonly misclosure: Misclosure;
  /**
   * `open`: the calls do not come back, and nothing was balanced. `exactly`: to less than calls can say. `off`: by the
   * misclosure.
   */
  readonly closes: 'exactly' | 'off' | 'open';
  /** The n of 1:n, the perimeter by the misclosure; null where it closes exactly or not at all. */
  readonly precision: number | null;
  /** The balanced lot; null while the calls are open. */
  readonly lot: Lot | null;
}

/** A gap of more than this share of the perimeter is no error of closure. Ours, no published source. */
const openShare = 1 / 25;

const whole = 2 * Math.PI;

const latDep = ({ azimuth, length }: Course): LatDep => ({
  lat: length * Math.cos(azimuth),
  dep: length * Math.sin(azimuth),
});

const misclosureOf = (courses: readonly LatDep[]): Misclosure => {
  const lat = courses.reduce((total, one) => total + one.lat, 0);
  const dep = courses.reduce((total, one) => total + one.dep, 0);
  const length = inches(Math.hypot(lat, dep));
  const azimuth = radians((Math.atan2(dep, lat) + whole) % whole);
  return { lat, dep, length, azimuth: length < slack ? null : azimuth };
};

const pointsOf = (courses: readonly LatDep[]): readonly SitePoint[] => {
  const points: SitePoint[] = [{ x: 0, y: 0 }];
  for (const { lat, dep } of courses) {
    const from = points.at(-1) ?? { x: 0, y: 0 };
    points.push({ x: from.x + dep, y: from.y + lat });
  }
  return points;
};

const closesOf = (
  { length }: Misclosure,
  perimeter: Inches,
  { courses, ends }: Pick<Calls, 'courses' | 'ends'>,
): Traverse['closes'] => {
  const straight = courses.every(({ curve }) => curve === null);
  if (courses.length < (straight ? 3 : 2)) return 'open';
  if (length < finestReading) return 'exactly';
  return ends === 'untold' && length > perimeter * openShare ? 'open' : 'off';
};

/**
 * Walks along the courses of a lot: latitudes and departures, the misclosure, the precision and the lot
 * balanced by the compass rule. Calls are open where they end farther off than an error could be and do
 * not say that they come back, and where there are too few to go round anything.
 */
export const traverse = (calls: Pick<Calls, 'courses' | 'ends'>): Traverse => {
  const courses = calls.courses.map((course) => ({ ...course, ...latDep(course) }));
  const misclosure = misclosureOf(courses);
  const perimeter = sum(courses.map(({ curve, length }) => curve?.arc ?? length));
  const closes = closesOf(misclosure, perimeter, calls);
  return {
    courses,
    points: pointsOf(courses),
    perimeter,
    misclosure,
    closes,
    precision: closes === 'off' ? perimeter / misclosure.length : null,
    lot: closes === 'open' ? null : lotOf(courses, misclosure),
  };
};
