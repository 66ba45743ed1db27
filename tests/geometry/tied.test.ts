import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { tied } from '../../src/geometry/tied.ts';

const coordinate = fc.double({ min: -50_000, max: 50_000, noNaN: true });
const place = fc.record({ x: coordinate, y: coordinate });

/** Twice the area of a triangle: above zero where the third corner lies left of the first two. */
const turned = (a: SitePoint, b: SitePoint, c: SitePoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

const metAt = (found: ReturnType<typeof tied<'site'>>): SitePoint => {
  if (found.kind !== 'met') throw new Error(`expected the tapes to meet, found ${found.kind}`);
  return found.at;
};

describe('a two-tape tie', () => {
  // Both stations and azimuths: J. Mahun, Open Access Surveying Library, IV COGO, chapter B,
  // direction-direction intersection. The distances and P are worked out from those with sines here.
  it('[G24] is the crossing of two published directions', () => {
    const [l, m] = [
      { x: 2255.9, y: 614.8 },
      { x: 2517.03, y: 791.53 },
    ];
    const azimuth = (d: number, min: number, s: number) =>
      ((d + min / 60 + s / 3600) * Math.PI) / 180;
    const [atL, atM] = [azimuth(117, 22, 40), azimuth(198, 10, 30)];
    const lm = distance(l, m);
    const [lToM, mToL] = [Math.atan2(m.x - l.x, m.y - l.y), Math.atan2(l.x - m.x, l.y - m.y)];
    const [a, b] = [Math.abs(atL - lToM), Math.abs(atM - (mToL + 2 * Math.PI))];
    const [lp, mp] = [(lm * Math.sin(b)) / Math.sin(a + b), (lm * Math.sin(a)) / Math.sin(a + b)];
    expect(lp).toBeCloseTo(195.492, 3);
    expect(mp).toBeCloseTo(280.629, 3);
    const p = metAt(tied({ start: l, end: m }, { start: lp, end: mp, side: 'right' }));
    expect(p.y).toBeCloseTo(524.902, 3);
    expect(p.x).toBeCloseTo(2429.496, 3);
    const rounded = metAt(
      tied({ start: l, end: m }, { start: 195.492, end: 280.629, side: 'right' }),
    );
    expect(distance(rounded, p)).toBeLessThan(0.001);
    const other = metAt(tied({ start: l, end: m }, { start: lp, end: mp, side: 'left' }));
    expect(turned(l, m, other)).toBeCloseTo(-turned(l, m, p), 6);
  });

  it('[G24] is 3-4-5 where a corner is square', () => {
    const base = { start: { x: 0, y: 0 }, end: { x: 4, y: 0 } };
    expect(tied(base, { start: 3, end: 5, side: 'left' })).toEqual({
      kind: 'met',
      at: { x: 0, y: 3 },
    });
    expect(tied(base, { start: 3, end: 5, side: 'right' })).toEqual({
      kind: 'met',
      at: { x: 0, y: -3 },
    });
  });

  it('[G24] has both distances and the side that was asked for, of any base and point', () => {
    fc.assert(
      fc.property(place, place, place, (start, end, point) => {
        const base = distance(start, end);
        fc.pre(base > 1);
        const area = turned(start, end, point);
        const side = area < 0 ? 'right' : 'left';
        const tapes = { start: distance(start, point), end: distance(end, point), side } as const;
        const at = metAt(tied({ start, end }, tapes));
        // coordinates and tapes are rounded at 1e5 in; across a short base that counts more
        const slack = 1e-9 * Math.max(1, tapes.start / base);
        expect(Math.abs(distance(start, at) - tapes.start)).toBeLessThan(slack);
        expect(Math.abs(distance(end, at) - tapes.end)).toBeLessThan(slack);
        // off the base by h, a length of 1e5 in differs by h² ÷ 2e5: less than it is rounded by below 1e-3 in
        if (Math.abs(area) > 1e-2 * base)
          expect(Math.sign(turned(start, end, at))).toBe(Math.sign(area));
      }),
    );
  });

  it('[G24] meets in line with a short base far off, where lengths are rounded by more than it shows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        fc.double({ min: 1.01, max: 12, noNaN: true }),
        fc.double({ min: 1_000, max: 60_000, noNaN: true }),
        (way, base, far) => {
          const along = (by: number) => ({ x: 7 + by * Math.cos(way), y: 9 + by * Math.sin(way) });
          const [start, end, point] = [along(0), along(base), along(far)];
          const tapes = { start: distance(start, point), end: distance(end, point) };
          expect(tied({ start, end }, { ...tapes, side: 'left' }).kind).toBe('met');
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('[G25] says by how much two tapes are too short together', () => {
    const base = { start: { x: 100, y: 50 }, end: { x: 100, y: 290 } };
    expect(tied(base, { start: 100, end: 120, side: 'left' })).toEqual({ kind: 'short', by: 20 });
    expect(tied(base, { start: 0, end: 0, side: 'left' })).toEqual({ kind: 'short', by: 240 });
  });

  it('[G25] says which tape is too long for the other, and by how much', () => {
    const base = { start: { x: 0, y: 0 }, end: { x: 240, y: 0 } };
    expect(tied(base, { start: 400, end: 120, side: 'left' })).toEqual({
      kind: 'long',
      tape: 'start',
      by: 40,
    });
    expect(tied(base, { start: 10, end: 300, side: 'right' })).toEqual({
      kind: 'long',
      tape: 'end',
      by: 50,
    });
  });

  it('[G25] takes tapes that lie along the base for one point on it, and no base for none', () => {
    const base = { start: { x: 0, y: 0 }, end: { x: 240, y: 0 } };
    expect(tied(base, { start: 100, end: 140, side: 'left' })).toEqual({
      kind: 'met',
      at: { x: 100, y: 0 },
    });
    expect(tied(base, { start: 340, end: 100, side: 'left' })).toEqual({
      kind: 'met',
      at: { x: 340, y: 0 },
    });
    const nowhere = { start: { x: 7, y: 7 }, end: { x: 7, y: 7 } };
    expect(tied(nowhere, { start: 5, end: 5, side: 'left' })).toEqual({ kind: 'no base' });
  });
});
