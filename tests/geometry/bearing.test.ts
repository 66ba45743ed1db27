import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bearing } from '../../src/geometry/bearing.ts';
import { distance } from '../../src/geometry/distance.ts';
import { moved } from '../../src/geometry/moved.ts';
import { sitePoint } from './arbitraries.ts';

describe('bearing', () => {
  it('counts from east by north', () => {
    const here = { x: 5, y: 5 };
    expect(bearing(here, { x: 9, y: 5 })).toBe(0);
    expect(bearing(here, { x: 5, y: 9 })).toBe(Math.PI / 2);
    expect(bearing(here, { x: 1, y: 5 })).toBe(Math.PI);
    expect(bearing(here, { x: 5, y: 1 })).toBe(-Math.PI / 2);
  });

  it('[G7] west is +π even where the difference is -0', () => {
    expect(bearing({ x: 0, y: 0 }, { x: -1, y: -0 })).toBe(Math.PI);
  });

  it('is 0 for points that coincide', () => {
    expect(bearing({ x: 3, y: 3 }, { x: 3, y: 3 })).toBe(0);
  });

  it('with the distance leads back to the point', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, (from, to) => {
        const reached = moved(from, bearing(from, to), distance(from, to));
        expect(distance(reached, to)).toBeLessThan(1e-9);
      }),
    );
  });
});
