import type { Projective } from './projective.ts';

/** The map that does `first`, then `then`. */
export const composed = (then: Projective, first: Projective): Projective => {
  const [a, b, c, d, e, f, g, h, i] = then;
  const [p, q, r, s, t, u, v, w, x] = first;
  return [
    ...([a * p + b * s + c * v, a * q + b * t + c * w, a * r + b * u + c * x] as const),
    ...([d * p + e * s + f * v, d * q + e * t + f * w, d * r + e * u + f * x] as const),
    ...([g * p + h * s + i * v, g * q + h * t + i * w, g * r + h * u + i * x] as const),
  ];
};
