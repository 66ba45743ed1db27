/** The integral of a function over a stretch by Simpson's rule in so many double strips. */
export const integral = (
  of: (x: number) => number,
  [from, to]: readonly [number, number],
  strips = 2000,
): number => {
  const step = (to - from) / (2 * strips);
  let sum = of(from) + of(to);
  for (let n = 1; n < 2 * strips; n += 1) sum += (n % 2 === 0 ? 2 : 4) * of(from + n * step);
  return (sum * step) / 3;
};

/**
 * How far a cantilever that is fast at 0 leans at a height, inches, where it bends by a moment (inch-pounds,
 * by height): the slopes that the moments add up to, added up again.
 */
export const leanOf = (
  moment: (height: number) => number,
  { height, modulus, inertia }: { height: number; modulus: number; inertia: number },
): number => integral((y) => ((height - y) * moment(y)) / (modulus * inertia), [0, height]);
