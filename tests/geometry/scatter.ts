import type { SitePoint } from '../../src/geometry/point.ts';

/**
 * So many places on a square of a side in inches about the origin, the same for the same seed; no
 * four of them on a circle and no three on a line but by a chance of rounding.
 */
export const scatter = (seed: number, count: number, side: number): SitePoint[] => {
  // Lehmer's generator with the multiplier of Park and Miller (1988)
  let state = (Math.abs(Math.trunc(seed)) % 2_147_483_646) + 1;
  const next = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647 - 0.5;
  };
  for (let n = 0; n < 8; n += 1) next();
  return Array.from({ length: count }, () => ({ x: next() * side, y: next() * side }));
};
