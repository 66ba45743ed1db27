import { inches, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import { finestReading } from './finestReading.ts';
import type { LatDep, Traverse } from './traverse.ts';

/** One slip of the pen that would explain why calls do not close: the course as it would have to be. */
export interface Slip {
  /** Counted from 0. */
  readonly course: number;
  readonly kind: 'bearing' | 'distance';
  readonly azimuth: Radians;
  readonly length: Inches;
  /** The n of 1:n that the calls would then close to; Infinity where they would close exactly. */
  readonly precision: number;
}

type Tried = Omit<Slip, 'precision'>;

const whole = 2 * Math.PI;

/** A bearing with N and S, or E and W, or both exchanged. */
const mirrored = (azimuth: number): readonly number[] => [
  (Math.PI - azimuth + whole) % whole,
  (whole - azimuth) % whole,
  (azimuth + Math.PI) % whole,
];

const reach = (azimuth: number, length: number): LatDep => ({
  lat: length * Math.cos(azimuth),
  dep: length * Math.sin(azimuth),
});

const triedOn = ({ courses, misclosure }: Traverse): readonly Tried[] =>
  courses.flatMap(({ azimuth, length, curve }, course) => {
    if (curve !== null) return [];
    const along = reach(azimuth, 1);
    const over = misclosure.lat * along.lat + misclosure.dep * along.dep;
    const far = inches(length - over);
    const turned = mirrored(azimuth).map((other): Tried => {
      return { course, kind: 'bearing', azimuth: radians(other), length };
    });
    return far > 0 ? [...turned, { course, kind: 'distance', azimuth, length: far }] : turned;
  });

/**
 * The single slips of a straight course that would make calls close to 1 in `parts` or better, the best
 * first, at most three: N for S, E for W, or another distance. None where they close as well already.
 * They are guesses; nothing is drawn by them.
 */
export const slips = (told: Traverse, parts: number): readonly Slip[] => {
  const { courses, misclosure, perimeter, closes, precision } = told;
  if (closes === 'exactly' || (precision ?? 0) >= parts || courses.length < 3) return [];
  return triedOn(told)
    .flatMap((tried) => {
      const was = courses[tried.course] ?? misclosure;
      const now = reach(tried.azimuth, tried.length);
      const off = Math.hypot(
        misclosure.lat - was.lat + now.lat,
        misclosure.dep - was.dep + now.dep,
      );
      const round = perimeter - (courses[tried.course]?.length ?? 0) + tried.length;
      const then = off < finestReading ? Infinity : round / off;
      return then >= parts ? [{ ...tried, precision: then }] : [];
    })
    .toSorted((a, b) => b.precision - a.precision)
    .slice(0, 3);
};
