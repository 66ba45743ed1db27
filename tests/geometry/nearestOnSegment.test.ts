import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { nearestOnSegment } from '../../src/geometry/nearestOnSegment.ts';
import { rigidMotion, sitePoint } from './arbitraries.ts';

describe('nearestOnSegment', () => {
  const segment = { start: { x: 0, y: 0 }, end: { x: 10, y: 0 } };

  it('drops a perpendicular onto the segment', () => {
    const nearest = nearestOnSegment({ x: 4, y: 3 }, segment);
    expect(nearest).toEqual({ point: { x: 4, y: 0 }, along: 0.4, distance: 3 });
  });

  it('stops at the ends', () => {
    expect(nearestOnSegment({ x: -3, y: 4 }, segment)).toMatchObject({ along: 0, distance: 5 });
    expect(nearestOnSegment({ x: 13, y: 4 }, segment)).toMatchObject({ along: 1, distance: 5 });
  });

  it('[G4] a segment without length is its start', () => {
    const dotted = { start: { x: 3, y: 4 }, end: { x: 3, y: 4 } };
    const nearest = nearestOnSegment({ x: 0, y: 0 }, dotted);
    expect(nearest).toEqual({ point: { x: 3, y: 4 }, along: 0, distance: 5 });
  });

  it('[G4] no other point of the segment is nearer', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, share, (point, start, end, other) => {
        const nearest = nearestOnSegment(point, { start, end });
        expect(distance(nearest.point, lerp(start, end, nearest.along))).toBe(0);
        expect(nearest.distance).toBeLessThanOrEqual(
          distance(point, lerp(start, end, other)) + 1e-9,
        );
      }),
    );
  });

  it('[G2] distance and share are kept by rigid motions', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, rigidMotion, (point, start, end, motion) => {
        const here = nearestOnSegment(point, { start, end });
        const there = nearestOnSegment(motion(point), { start: motion(start), end: motion(end) });
        expect(there.distance).toBeCloseTo(here.distance, 6);
        const way = distance(start, end);
        expect(there.along * way).toBeCloseTo(here.along * way, 5);
      }),
    );
  });
});
