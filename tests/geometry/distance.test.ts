import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { mirrored, rigidMotion, sitePoint } from './arbitraries.ts';

describe('distance', () => {
  it('squares a corner by 3-4-5', () => {
    expect(distance({ x: 10, y: 10 }, { x: 40, y: 50 })).toBe(50);
  });

  it('gives the diagonal of a 60 × 100 ft layout as 116.619 ft', () => {
    // √13,600 ft; a layout text words it as 116 ft and six tenths
    expect(distance({ x: 0, y: 0 }, { x: 720, y: 1200 }) / 12).toBeCloseTo(116.619, 3);
  });

  it('[G2] is kept by moving, turning and mirroring', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, rigidMotion, (a, b, motion) => {
        expect(distance(motion(a), motion(b))).toBeCloseTo(distance(a, b), 7);
        expect(distance(mirrored(a), mirrored(b))).toBe(distance(a, b));
      }),
    );
  });
});
