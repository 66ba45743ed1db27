import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readable } from '../../../src/drawing/lettering/readable.ts';
import { radians } from '../../../src/units/radians.ts';

describe('readable', () => {
  it('[D8] is never upside down and stays on the line', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (angle) => {
        const turned = readable(radians(angle));
        expect(Math.cos(turned)).toBeGreaterThanOrEqual(-1e-5);
        expect(Math.abs(Math.sin(turned - angle))).toBeLessThan(1e-9);
      }),
    );
  });

  it('[D8] reads upright text from the right, whichever way it ran', () => {
    expect(readable(radians(Math.PI / 2))).toBeCloseTo(Math.PI / 2, 12);
    expect(readable(radians(-Math.PI / 2))).toBeCloseTo(Math.PI / 2, 12);
    expect(readable(radians(-Math.PI / 2 + 1e-9))).toBeCloseTo(Math.PI / 2, 6);
  });
});
