import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centroid } from '../../src/geometry/centroid.ts';
import { distance } from '../../src/geometry/distance.ts';
import { rigidMotion, starPolygon } from './arbitraries.ts';

describe('centroid', () => {
  it('of an L lies where its two rectangles balance', () => {
    // 4 × 1 at (2, 0.5) and 1 × 3 at (0.5, 2.5)
    const ell = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 1 },
      { x: 1, y: 1 },
      { x: 1, y: 4 },
      { x: 0, y: 4 },
    ];
    const found = centroid(ell);
    expect(found?.x).toBeCloseTo((4 * 2 + 3 * 0.5) / 7, 12);
    expect(found?.y).toBeCloseTo((4 * 0.5 + 3 * 2.5) / 7, 12);
  });

  it('is the mean of points that enclose nothing, null for none', () => {
    expect(
      centroid([
        { x: 0, y: 0 },
        { x: 6, y: 2 },
      ]),
    ).toEqual({ x: 3, y: 1 });
    expect(centroid([])).toBeNull();
  });

  it('[G2] moves and turns with the polygon', () => {
    fc.assert(
      fc.property(starPolygon, rigidMotion, (polygon, motion) => {
        const here = centroid(polygon);
        const there = centroid(polygon.map(motion));
        if (here === null || there === null) throw new Error('a polygon with area has a centroid');
        expect(distance(motion(here), there)).toBeLessThan(1e-5);
      }),
    );
  });
});
