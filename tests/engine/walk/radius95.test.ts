import fc from 'fast-check';
import { expect, it } from 'vitest';
import { deviationOf95, radius95 } from '../../../src/engine/walk/radius95.ts';
import { inches } from '../../../src/units/inches.ts';

/** Numbers from 0 to 1 that repeat in every run (a linear congruential generator). */
const repeatable = (seed: number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
};

it('[Y1] 95 of 100 places that scatter alike both ways lie within the radius', () => {
  const random = repeatable(7);
  const count = 200_000;
  const radius = radius95(inches(10));
  let within = 0;
  for (let n = 0; n < count; n++) {
    // two normal deviates (Box and Muller 1958)
    const [size, turn] = [10 * Math.sqrt(-2 * Math.log(random())), 2 * Math.PI * random()];
    if (Math.hypot(size * Math.cos(turn), size * Math.sin(turn)) <= radius) within += 1;
  }
  // five standard errors of the count: 0.0024
  expect(Math.abs(within / count - 0.95)).toBeLessThan(0.0025);
});

it('[Y1] is 2.4477 standard deviations, as tables of the Rayleigh distribution have it (from memory)', () => {
  expect(radius95(inches(1))).toBeCloseTo(2.4477, 4);
});

it('[Y1] turns round', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (radius) => {
      expect(radius95(deviationOf95(inches(radius)))).toBeCloseTo(radius, 6);
    }),
  );
});
