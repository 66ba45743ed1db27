import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leavesFor } from '../../../src/engine/gate/leavesFor.ts';
import { inches } from '../../../src/units/inches.ts';

describe('leavesFor', () => {
  // 10 ft and 12 ft double gates turned round: common practice, no published source
  it.each([
    [120, 6.25, 56.875],
    [144, 6.75, 68.625],
  ])('[O4] an opening of %d less %d takes two leaves of %d', (want, taken, leaf) => {
    const order = leavesFor(inches(want), inches(taken), 2, inches(1 / 8));
    expect(order).toEqual({ leaf, opening: want });
  });

  it('[O4] rounds down to the step and works the opening out again', () => {
    const order = leavesFor(inches(48), inches(4.1), 1, inches(0.25));
    expect(order.leaf).toBe(43.75);
    expect(order.opening).toBeCloseTo(47.85, 12);
  });

  it('[O4] never asks for more than is there, nor a whole step less, in any unit', () => {
    const tenths = fc.integer({ min: 5000, max: 60000 }).map((n) => n / 254);
    const step = fc.constantFrom(1 / 16, 1 / 8, 1 / 4, 1 / 25.4, 5 / 25.4, 0.12);
    fc.assert(
      fc.property(tenths, fc.constantFrom(1, 2), step, (want, count, size) => {
        const taken = 4.1;
        const { leaf, opening } = leavesFor(inches(want), inches(taken), count, inches(size));
        expect(opening).toBeLessThanOrEqual(want + 1e-6);
        expect(opening).toBeGreaterThan(want - count * size - 1e-6);
        expect(opening).toBeCloseTo(leaf * count + taken, 9);
      }),
    );
  });

  it('[O4] a leaf that is just a whole number of millimetres keeps them all', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 4000 }), fc.constantFrom(1, 2), (mm, count) => {
        const taken = 97 / 25.4;
        const want = taken + (count * mm) / 25.4;
        const { leaf } = leavesFor(inches(want), inches(taken), count, inches(1 / 25.4));
        expect(leaf).toBeCloseTo(mm / 25.4, 9);
      }),
    );
  });

  it('[O4] says in one line when nothing is left for a leaf', () => {
    expect(() => leavesFor(inches(4), inches(6), 1, inches(0.25))).toThrow(/4 in: expected more/);
  });

  it.each([0, 1.5, -1])('[O4] refuses %d leaves', (count) => {
    expect(() => leavesFor(inches(48), inches(4), count, inches(1))).toThrow(/leaves: expected/);
  });
});
