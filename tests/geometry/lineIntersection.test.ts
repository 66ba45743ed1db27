import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { lineIntersection } from '../../src/geometry/lineIntersection.ts';
import { moved } from '../../src/geometry/moved.ts';
import { fromDegrees } from '../../src/units/radians.ts';
import { anyAngle, sitePoint } from './arbitraries.ts';

describe('lineIntersection', () => {
  it('crosses beyond both segments, with the shares there', () => {
    const level = { start: { x: 0, y: 0 }, end: { x: 2, y: 0 } };
    const upright = { start: { x: 6, y: 3 }, end: { x: 6, y: 2 } };
    expect(lineIntersection(level, upright)).toEqual({
      point: { x: 6, y: 0 },
      alongFirst: 3,
      alongSecond: 3,
    });
  });

  it('finds the point of a published pair of azimuths', () => {
    // inputs: J. Mahun, Open Access Surveying Library, COGO ch. B (ft, azimuths from north);
    // the point (N 524.902, E 2429.496) is derived from them
    const towards = (degrees: number, minutes: number, seconds: number) =>
      fromDegrees(90 - (degrees + minutes / 60 + seconds / 3600));
    const first = { x: 2255.9, y: 614.8 };
    const second = { x: 2517.03, y: 791.53 };
    const crossing = lineIntersection(
      { start: first, end: moved(first, towards(117, 22, 40), 1) },
      { start: second, end: moved(second, towards(198, 10, 30), 1) },
    );
    expect(crossing?.point.y).toBeCloseTo(524.902, 2);
    expect(crossing?.point.x).toBeCloseTo(2429.496, 2);
    expect(crossing?.alongFirst).toBeCloseTo(195.492, 2);
    expect(crossing?.alongSecond).toBeCloseTo(280.629, 2);
  });

  it('[G5] parallel lines, one line twice and segments without length have none', () => {
    const slanted = { start: { x: 0, y: 0 }, end: { x: 3, y: 1 } };
    const beside = { start: { x: 0, y: 5 }, end: { x: -6, y: 3 } };
    const dotted = { start: { x: 1, y: 1 }, end: { x: 1, y: 1 } };
    expect(lineIntersection(slanted, beside)).toBeNull();
    expect(lineIntersection(slanted, slanted)).toBeNull();
    expect(lineIntersection(slanted, dotted)).toBeNull();
  });

  it('[G5] stays parallel in every direction, for all that rounding does', () => {
    const far = fc.integer({ min: 10, max: 100_000 });
    fc.assert(
      fc.property(sitePoint, sitePoint, anyAngle, far, (a, b, angle, length) => {
        const first = { start: a, end: moved(a, angle, length) };
        const second = { start: b, end: moved(b, angle, length) };
        expect(lineIntersection(first, second)).toBeNull();
      }),
    );
  });

  it('[G5] the point lies on both lines at the shares returned', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, sitePoint, (a, b, c, d) => {
        const crossing = lineIntersection({ start: a, end: b }, { start: c, end: d });
        if (crossing === null) return;
        const onFirst = lerp(a, b, crossing.alongFirst);
        const onSecond = lerp(c, d, crossing.alongSecond);
        const reach = 1 + Math.hypot(onFirst.x, onFirst.y);
        expect(distance(crossing.point, onFirst)).toBe(0);
        expect(distance(onFirst, onSecond)).toBeLessThan(1e-6 * reach);
      }),
    );
  });
});
