import type { SitePoint } from '../geometry/point.ts';
import type { Radians } from '../units/radians.ts';

// the cosine of a right angle is 6e-17 in float64: a line due north must not lean
const settled = (value: number): number => (Math.abs(value) < 1e-15 ? 0 : value);

/** The vector of length 1 in a direction, counter-clockwise from east; exact for the compass. */
export const direction = (angle: Radians): SitePoint => ({
  x: settled(Math.cos(angle)),
  y: settled(Math.sin(angle)),
});
