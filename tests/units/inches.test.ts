import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, sum } from '../../src/units/inches.ts';

it('[U4] sums of n/64 in are exact in any order', () => {
  const counts = fc.array(fc.integer({ min: -4_055_040, max: 4_055_040 }));
  fc.assert(
    fc.property(counts, (list) => {
      const lengths = list.map((n) => inches(n / 64));
      const total = list.reduce((all, n) => all + n, 0) / 64;
      expect(sum(lengths) - total).toBe(0);
      expect(sum(lengths.toReversed()) - total).toBe(0);
    }),
  );
  expect(sum([])).toBe(0);
});
