import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lerp } from '../../src/geometry/lerp.ts';
import { sitePoint } from './arbitraries.ts';

describe('lerp', () => {
  it('gives a share of the way, and goes on past the ends', () => {
    const [a, b] = [
      { x: 10, y: 8 },
      { x: 14, y: 3 },
    ];
    expect(lerp(a, b, 0.25)).toEqual({ x: 11, y: 6.75 });
    expect(lerp(a, b, 0.75)).toEqual({ x: 13, y: 4.25 });
    expect(lerp(a, b, 2)).toEqual({ x: 18, y: -2 });
    expect(lerp(a, b, -1)).toEqual({ x: 6, y: 13 });
  });

  it('gives both ends to the last bit', () => {
    const far = fc.record({
      x: fc.double({ min: -6e5, max: 6e5, noNaN: true }),
      y: fc.constant(1),
    });
    fc.assert(
      fc.property(far, sitePoint, (a, b) => {
        // by ===, for which -0 is 0
        expect(lerp(a, b, 0).x === a.x).toBe(true);
        expect(lerp(a, b, 1).x === b.x).toBe(true);
      }),
    );
  });
});
