import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineIntersection } from '../../src/geometry/lineIntersection.ts';
import { offsetPolyline } from '../../src/geometry/offsetPolyline.ts';
import { turn } from '../../src/geometry/turn.ts';
import { sitePoint } from './arbitraries.ts';
import type { SitePoint } from '../../src/geometry/point.ts';

const corner = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
];

/** Distance of a point to the left of the endless line through two others. */
const leftOf = (a: SitePoint, b: SitePoint, point: SitePoint): number =>
  ((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) /
  Math.hypot(b.x - a.x, b.y - a.y);

describe('offsetPolyline', () => {
  it('[G8] lies to the left for a positive distance, to the right for a negative one', () => {
    expect(offsetPolyline(corner, 2)).toEqual([
      { x: 0, y: 2 },
      { x: 8, y: 2 },
      { x: 8, y: 10 },
    ]);
    expect(offsetPolyline(corner, -2)).toEqual([
      { x: 0, y: -2 },
      { x: 12, y: -2 },
      { x: 12, y: 10 },
    ]);
  });

  it('[G8] a mitre beyond the limit is cut to a bevel of two points', () => {
    // the mitre of a square corner is √2 offsets long
    expect(offsetPolyline(corner, -2, 1.42)).toHaveLength(3);
    expect(offsetPolyline(corner, -2, 1.41)).toEqual([
      { x: 0, y: -2 },
      { x: 10, y: -2 },
      { x: 12, y: 0 },
      { x: 12, y: 10 },
    ]);
  });

  it('[G8] a line that turns straight back is bevelled, not thrown to infinity', () => {
    const back = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 4, y: 0 },
    ];
    const parallel = offsetPolyline(back, 1);
    expect(parallel.map(({ x }) => x)).toEqual([0, 10, 10, 4]);
    expect(parallel.map(({ y }) => y)).toEqual([1, 1, -1, -1]);
  });

  it('takes points on one spot once and has no parallel to a single place', () => {
    const [a, b, c] = corner;
    if (!a || !b || !c) throw new Error('three points');
    expect(offsetPolyline([a, a, b, b, c], 2)).toEqual(offsetPolyline([a, b, c], 2));
    expect(offsetPolyline([a, a], 2)).toEqual([]);
    expect(offsetPolyline([], 2)).toEqual([]);
  });

  it('[G8] both legs of a mitred corner keep the distance', () => {
    const off = fc.integer({ min: -200, max: 200 });
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, off, (a, b, c, distance) => {
        fc.pre(Math.abs(turn(a, b, c)) < 2.5 && lineIntersection(seg(a, b), seg(b, c)) !== null);
        const parallel = offsetPolyline([a, b, c], distance);
        expect(parallel).toHaveLength(3);
        const [first, second, third] = parallel;
        if (!first || !second || !third) throw new Error('three points');
        expect(leftOf(a, b, first)).toBeCloseTo(distance, 5);
        expect(leftOf(a, b, second)).toBeCloseTo(distance, 5);
        expect(leftOf(b, c, second)).toBeCloseTo(distance, 5);
        expect(leftOf(b, c, third)).toBeCloseTo(distance, 5);
      }),
    );
  });
});

const seg = (start: SitePoint, end: SitePoint) => ({ start, end });
