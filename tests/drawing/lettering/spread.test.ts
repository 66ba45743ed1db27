import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../src/drawing/lettering/spread.ts';

const anyThings = fc.array(
  fc.record({
    middle: fc.double({ min: -50, max: 50, noNaN: true }),
    width: fc.double({ min: 0.1, max: 10, noNaN: true }),
  }),
  { maxLength: 12 },
);

describe('spread', () => {
  it('[D27] leaves things that do not touch where they wish to be', () => {
    const things = [
      { middle: 0, width: 2 },
      { middle: 3, width: 2 },
    ];
    expect(spread(things)).toEqual([0, 3]);
  });

  it('[D27] parts two on one spot evenly', () => {
    const things = [
      { middle: 5, width: 2 },
      { middle: 5, width: 2 },
    ];
    expect(spread(things)).toEqual([4, 6]);
  });

  it('[D27] lets nothing overlap, and keeps the order', () => {
    fc.assert(
      fc.property(anyThings, (things) => {
        const middles = spread(things);
        expect(middles).toHaveLength(things.length);
        middles.slice(1).forEach((middle, n) => {
          const least = ((things[n]?.width ?? NaN) + (things[n + 1]?.width ?? NaN)) / 2;
          expect(middle - (middles[n] ?? NaN)).toBeGreaterThan(least - 1e-9);
        });
      }),
    );
  });

  it('[D27] a row that runs together stays about its own middle', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 3, noNaN: true }), { minLength: 1 }),
        (widths) => {
          const middles = spread(widths.map((width) => ({ middle: 7, width })));
          const off = middles.reduce((sum, middle) => sum + middle - 7, 0);
          expect(off).toBeCloseTo(0, 6);
        },
      ),
    );
  });
});
