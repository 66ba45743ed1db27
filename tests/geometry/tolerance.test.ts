import { describe, expect, it } from 'vitest';
import { farthest, parallelSine, slack, spot } from '../../src/geometry/tolerance.ts';

/** The step from a number to the next larger float64, found by halving. */
const stepAbove = (value: number): number => {
  let step = value;
  while (value + step / 2 > value) step /= 2;
  return step;
};

describe('tolerance', () => {
  it('[G3] slack is hundreds of rounding steps at the edge of the largest site', () => {
    expect(stepAbove(farthest)).toBeLessThanOrEqual(2 ** -33);
    expect(slack / stepAbove(farthest)).toBeGreaterThan(2 ** 9);
  });

  it('[G3] slack is far below one spot, and a spot is 1/64 in', () => {
    expect(spot).toBe(1 / 64);
    expect(slack).toBeLessThan(spot / 1000);
  });

  it('[G3] lines called parallel drift apart by no more than a spot across the largest site', () => {
    const diagonal = Math.hypot(2 * farthest, 2 * farthest);
    expect(parallelSine * diagonal).toBeLessThanOrEqual(spot * (1 + 1e-12));
    expect(parallelSine * diagonal).toBeGreaterThan(spot * (1 - 1e-12));
  });
});
