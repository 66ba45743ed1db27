import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { segmentIntersection } from '../../src/geometry/segmentIntersection.ts';
import { slack } from '../../src/geometry/tolerance.ts';
import { sitePoint } from './arbitraries.ts';

const level = { start: { x: 0, y: 0 }, end: { x: 10, y: 0 } };

describe('segmentIntersection', () => {
  it('crosses inside both', () => {
    const slanted = { start: { x: 2, y: -2 }, end: { x: 6, y: 2 } };
    expect(segmentIntersection(level, slanted)).toEqual({
      point: { x: 4, y: 0 },
      alongFirst: 0.4,
      alongSecond: 0.5,
    });
  });

  it('touches at an end', () => {
    const standing = { start: { x: 10, y: 0 }, end: { x: 10, y: 7 } };
    expect(segmentIntersection(level, standing)).toMatchObject({ alongFirst: 1, alongSecond: 0 });
  });

  it('forgives a millionth of an inch at an end, on short and long segments alike', () => {
    const ending = (length: number) => ({ start: { x: 0, y: 0 }, end: { x: length, y: 0 } });
    const standing = (x: number) => ({ start: { x, y: -1 }, end: { x, y: 1 } });
    for (const length of [0.5, 600_000]) {
      const near = segmentIntersection(ending(length), standing(length + slack / 2));
      expect(near?.point).toEqual({ x: length, y: 0 });
      expect(segmentIntersection(ending(length), standing(length + 3 * slack))).toBeNull();
      expect(segmentIntersection(ending(length), standing(-3 * slack))).toBeNull();
    }
  });

  it('misses where only the endless lines would cross', () => {
    const beyond = { start: { x: 11, y: -1 }, end: { x: 11, y: 1 } };
    const above = { start: { x: 5, y: 1 }, end: { x: 5, y: 9 } };
    expect(segmentIntersection(level, beyond)).toBeNull();
    expect(segmentIntersection(level, above)).toBeNull();
  });

  it('[G5] segments lying on each other have no single crossing', () => {
    expect(segmentIntersection(level, { start: { x: 5, y: 0 }, end: { x: 20, y: 0 } })).toBeNull();
  });

  it('[G5] a segment drawn through a point of another meets it there', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, share, (start, end, from, along) => {
        const meeting = lerp(start, end, along);
        const second = { start: from, end: meeting };
        const square = Math.abs(
          (end.x - start.x) * (meeting.y - from.y) - (end.y - start.y) * (meeting.x - from.x),
        );
        // lines that almost lie on each other meet in no definite place
        fc.pre(square > 1e-2 * distance(start, end) * distance(from, meeting));
        const crossing = segmentIntersection({ start, end }, second);
        expect(crossing).not.toBeNull();
        if (crossing) expect(distance(crossing.point, meeting)).toBeLessThan(1e-5);
      }),
    );
  });
});
