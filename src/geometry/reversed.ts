import type { Projective } from './projective.ts';

/**
 * The way back of a map: its adjugate, which is a multiple of its inverse and does the same to points.
 * A map that flattens the plane to a line has no way back; what it gives then is not finite.
 */
export const reversed = ([a, b, c, d, e, f, g, h, i]: Projective): Projective => [
  ...([e * i - f * h, c * h - b * i, b * f - c * e] as const),
  ...([f * g - d * i, a * i - c * g, c * d - a * f] as const),
  ...([d * h - e * g, b * g - a * h, a * e - b * d] as const),
];
