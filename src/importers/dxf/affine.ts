import type { SitePoint } from '../../geometry/point.ts';

/** Turns, scales, mirrors and moves: x becomes ax + cy + e, y becomes bx + dy + f. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const scaled = (x: number, y: number): Affine => ({ a: x, b: 0, c: 0, d: y, e: 0, f: 0 });

export const shifted = (x: number, y: number): Affine => ({ a: 1, b: 0, c: 0, d: 1, e: x, f: y });

/** Turned counter-clockwise by so many degrees. */
export const rotatedBy = (degrees: number): Affine => {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
};

export const applied = ({ a, b, c, d, e, f }: Affine, { x, y }: SitePoint): SitePoint => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** The last first: what `chained(m, n)` does to a point is `m` of `n` of it. */
export const chained = (...all: readonly Affine[]): Affine =>
  all.reduce(
    (m, n) => ({
      a: m.a * n.a + m.c * n.b,
      b: m.b * n.a + m.d * n.b,
      c: m.a * n.c + m.c * n.d,
      d: m.b * n.c + m.d * n.d,
      e: m.a * n.e + m.c * n.f + m.e,
      f: m.b * n.e + m.d * n.f + m.f,
    }),
    scaled(1, 1),
  );

/** How much larger areas become; below zero where it mirrors. */
export const areaScale = ({ a, b, c, d }: Affine): number => a * d - b * c;

/** How many times as long the longer of the two axes becomes; no length becomes more than √2 times that. */
export const largest = ({ a, b, c, d }: Affine): number =>
  Math.max(Math.hypot(a, b), Math.hypot(c, d));

/** Whether circles stay circles. */
export const keepsCircles = ({ a, b, c, d }: Affine): boolean => {
  const size = Math.hypot(a, b) + Math.hypot(c, d);
  const even = Math.abs(Math.hypot(a, b) - Math.hypot(c, d)) <= 1e-9 * size;
  return even && Math.abs(a * c + b * d) <= 1e-9 * size * size;
};
