import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentDepth } from '../../../src/engine/structure/momentDepth.ts';
import { nonconstrainedTrial } from '../../../src/engine/structure/poleFooting.ts';
import { inches } from '../../../src/units/inches.ts';

describe('a pole that a moment alone bends', () => {
  it('[Z17] is what the code’s formula asks for at that very depth as the push goes to nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 2e6, noNaN: true }),
        fc.double({ min: 8, max: 48, noNaN: true }),
        fc.constantFrom(100, 150, 200, 400),
        (moment, wide, lateral) => {
          const ground = { width: inches(wide), lateral };
          const depth = momentDepth(moment, ground);
          const height = inches(1e9);
          const asks = (deep: number) =>
            nonconstrainedTrial({ pounds: moment / height, height }, ground, inches(deep)).asks;
          expect(asks(depth) / depth).toBeCloseTo(1, 3);
        },
      ),
    );
  });

  it('[Z4] more moment, weaker ground and a narrower hole never need less', () => {
    const ground = { width: inches(18), lateral: 150 };
    const base = momentDepth(6000, ground);
    expect(momentDepth(7000, ground)).toBeGreaterThan(base);
    expect(momentDepth(6000, { ...ground, lateral: 100 })).toBeGreaterThan(base);
    expect(momentDepth(6000, { ...ground, width: inches(12) })).toBeGreaterThan(base);
    expect(momentDepth(0, ground)).toBe(0);
  });

  it('[Z17] a moment or ground that cannot be is refused', () => {
    const ground = { width: inches(18), lateral: 150 };
    expect(() => momentDepth(-1, ground)).toThrow('moment of -1 in-lb: expected 0 or more');
    expect(() => momentDepth(1, { ...ground, lateral: 0 })).toThrow('expected above 0');
  });
});
