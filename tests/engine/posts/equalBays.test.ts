import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalBays } from '../../../src/engine/posts/equalBays.ts';
import { inches } from '../../../src/units/inches.ts';

const feet = (n: number) => inches(12 * n);

describe('equalBays', () => {
  it('[P1] 54 ft at 10 ft is 6 bays of 9 ft', () => {
    // worked example of a chain-link installation sheet, Scribd 154728461: 648 in / 6 = 108 in
    expect(equalBays(feet(54), feet(10))).toEqual({ count: 6, length: 108 });
  });

  it('[P1] 84 ft at 10 ft takes 8 line posts', () => {
    // homesteady.com, “how to estimate chain fence materials”, article 6110763
    expect(equalBays(feet(84), feet(10)).count - 1).toBe(8);
  });

  it('[P1] 80 ft at 10 ft takes 7 line posts, not the 8 of that article’s rule', () => {
    // derived: the article’s floor(L / 10) over-counts exact multiples by one
    expect(equalBays(feet(80), feet(10)).count - 1).toBe(7);
  });

  it('[P1] the bays are equal, no longer than the maximum, and as few as can be', () => {
    const length = fc.double({ min: 1, max: 63360, noNaN: true });
    const max = fc.double({ min: 12, max: 240, noNaN: true });
    fc.assert(
      fc.property(length, max, (l, m) => {
        const bays = equalBays(inches(l), inches(m));
        expect(bays.length * bays.count).toBeCloseTo(l, 6);
        expect(bays.length).toBeLessThanOrEqual(m * (1 + 1e-8));
        if (bays.count > 1) expect(l / (bays.count - 1)).toBeGreaterThan(m);
      }),
    );
  });

  it('[P1] an exact multiple made of sums is not over-counted', () => {
    const third = 40 / 3;
    expect(equalBays(inches(third * 9), inches(third)).count).toBe(9);
  });
});
