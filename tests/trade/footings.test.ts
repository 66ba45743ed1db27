import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { augerFor, holeDepth, holeDiameter } from '../../src/trade/footings.ts';
import { inches } from '../../src/units/inches.ts';

describe('holeDiameter', () => {
  it('[T6] follows ASTM F567-07 5.1 for every fence pipe', () => {
    // derived from the rule: 4 × outside diameter up to 4 in, 3 × above
    const derived = [
      [1.66, 6.64],
      [1.9, 7.6],
      [2.375, 9.5],
      [2.875, 11.5],
      [4, 16],
      [6.625, 19.875],
      [8.625, 25.875],
    ] as const;
    for (const [od, hole] of derived) expect(holeDiameter(inches(od))).toBeCloseTo(hole, 12);
  });

  it('[T6] steps down just above 4 in, as the rule does', () => {
    expect(holeDiameter(inches(4.001))).toBeCloseTo(12.003, 12);
  });
});

describe('augerFor', () => {
  const sizes = [6, 8, 9, 10, 12, 14, 16, 18, 24, 26, 28, 30, 32, 34, 36, 38, 40];

  it('[T6] bores the holes of the fence pipes', () => {
    const bored = [6.64, 7.6, 9.5, 11.5, 16, 19.875, 25.875].map((hole) => augerFor(inches(hole)));
    expect(bored).toEqual([8, 8, 10, 12, 16, 24, 26]);
  });

  it('[T6] keeps a size that is an auger, and goes by even inches above 24', () => {
    expect(sizes.map((size) => augerFor(inches(size)))).toEqual(sizes);
    expect(augerFor(inches(3))).toBe(6);
    expect(augerFor(inches(24.01))).toBe(26);
  });

  it('[T6] never bores less than asked, nor skips an auger that would do', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (asked) => {
        const auger = augerFor(inches(asked));
        expect(auger).toBeGreaterThanOrEqual(asked);
        const wouldDo = sizes.filter((size) => size >= asked);
        expect(auger).toBeLessThanOrEqual(Math.min(...wouldDo));
        expect(augerFor(auger)).toBe(auger);
      }),
    );
  });
});

describe('holeDepth', () => {
  it('[T6] follows ASTM F567-07 5.1 by height of fabric', () => {
    // derived from the rule: 24 in, and 3 in for each foot over 4 ft
    const depths = [3, 4, 5, 6, 7, 8, 10, 12].map((feet) => holeDepth(inches(12 * feet)));
    expect(depths).toEqual([24, 24, 27, 30, 33, 36, 42, 48]);
  });

  it('[T6] counts a part of a foot as a whole one', () => {
    expect(holeDepth(inches(54))).toBe(27);
    expect(holeDepth(inches(48.25))).toBe(27);
  });

  it('[T6] at 8 ft is the 36 in that MIL-HDBK-1013/10 asks under gate posts', () => {
    expect(holeDepth(inches(96))).toBe(36);
  });
});
