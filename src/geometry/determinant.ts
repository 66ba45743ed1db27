import type { Projective } from './projective.ts';

/** The determinant of a 3 × 3 matrix by its rows. */
export const determinant = ([a, b, c, d, e, f, g, h, i]: Projective): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
