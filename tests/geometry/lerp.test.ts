import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lerp } from '../../src/geometry/lerp.ts';
import { sitePoint } from './arbitraries.ts';

describe('lerp', () => {
  it('gives a quarter of the way, and goes on past the end', () => {
    expect(lerp({ x: 0, y: 8 }, { x: 4, y: 0 }, 0.25)).toEqual({ x: 1, y: 6 });
    expect(lerp({ x: 0, y: 8 }, { x: 4, y: 0 }, 2)).toEqual({ x: 8, y: -8 });
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
