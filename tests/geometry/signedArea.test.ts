import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { signedArea } from '../../src/geometry/signedArea.ts';
import { mirrored, rigidMotion, starPolygon } from './arbitraries.ts';

describe('signedArea', () => {
  it('is positive counter-clockwise and negative backwards', () => {
    const yard = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 30, y: 20 },
      { x: 0, y: 20 },
    ];
    expect(signedArea(yard)).toBe(600);
    expect(signedArea(yard.toReversed())).toBe(-600);
  });

  it('gives the published area of a balanced traverse', () => {
    // J. Mahun, Open Access Surveying Library, Traverse Computations ch. I: adjusted latitudes
    // and departures in ft, area 102,935.7 sq ft by double meridian distances
    const courses: readonly (readonly [latitude: number, departure: number])[] = [
      [-176.386, -438.574],
      [203.382, -73.105],
      [192.34, 198.635],
    ];
    const corners = [{ x: 0, y: 0 }];
    for (const [latitude, departure] of courses) {
      const last = corners.at(-1) ?? { x: 0, y: 0 };
      corners.push({ x: last.x + departure, y: last.y + latitude });
    }
    expect(Math.abs(signedArea(corners))).toBeCloseTo(102_935.7, 1);
  });

  it('is 0 for a line there and back, and for nothing', () => {
    expect(
      signedArea([
        { x: 1, y: 1 },
        { x: 9, y: 5 },
      ]),
    ).toBe(0);
    expect(signedArea([])).toBe(0);
  });

  it('does not lose a square inch at the edge of the largest site', () => {
    const at = 633_000.123;
    const square = [
      { x: at, y: at },
      { x: at + 1, y: at },
      { x: at + 1, y: at + 1 },
      { x: at, y: at + 1 },
    ];
    expect(signedArea(square)).toBeCloseTo(1, 8);
  });

  it('[G2] is kept by rigid motions and changes sign in the mirror', () => {
    fc.assert(
      fc.property(starPolygon, rigidMotion, (polygon, motion) => {
        const area = signedArea(polygon);
        expect(area).toBeGreaterThan(0);
        expect(signedArea(polygon.map(motion)) / area).toBeCloseTo(1, 7);
        expect(signedArea(polygon.map(mirrored)) / area).toBeCloseTo(-1, 7);
      }),
    );
  });
});
