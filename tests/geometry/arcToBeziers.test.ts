import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcToBeziers } from '../../src/geometry/arcToBeziers.ts';
import { bearing } from '../../src/geometry/bearing.ts';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { moved } from '../../src/geometry/moved.ts';
import { principalAngle } from '../../src/geometry/principalAngle.ts';
import { fromDegrees, radians } from '../../src/units/radians.ts';
import { anyAngle, sitePoint } from './arbitraries.ts';
import type { Bezier } from '../../src/geometry/arcToBeziers.ts';

/** A point of a cubic curve by repeated halving of its frame (de Casteljau). */
const at = ({ from, leaving, arriving, to }: Bezier<'site'>, t: number) => {
  const [a, b, c] = [lerp(from, leaving, t), lerp(leaving, arriving, t), lerp(arriving, to, t)];
  return lerp(lerp(a, b, t), lerp(b, c, t), t);
};

const centre = { x: 0, y: 0 };
const pieces = (degrees: number) =>
  arcToBeziers<'site'>({ centre, radius: 1, start: radians(0), sweep: fromDegrees(degrees) });

describe('arcToBeziers', () => {
  it('[G9] no piece is over 90 degrees, and whole quarters are not cut again', () => {
    expect([0, 1, 90, 91, 180, 270, -270, 360].map((sweep) => pieces(sweep).length)).toEqual([
      0, 1, 1, 2, 2, 3, 3, 4,
    ]);
  });

  it('[G9] a quarter leaves the circle outwards only, by at most 2.73e-4, and by most of that', () => {
    const [quarter] = pieces(90);
    if (!quarter) throw new Error('one piece');
    const off = Array.from({ length: 1001 }, (_, n) => distance(centre, at(quarter, n / 1000)) - 1);
    expect(Math.min(...off)).toBeGreaterThan(-1e-12);
    expect(Math.max(...off)).toBeLessThan(2.73e-4);
    expect(Math.max(...off)).toBeGreaterThan(2.72e-4);
  });

  it('[G9] runs in one piece from start to end through the middle of the arc', () => {
    const sweeps = fc
      .double({ min: -6.28, max: 6.28, noNaN: true })
      .filter((s) => Math.abs(s) > 0.01);
    const radii = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(sitePoint, radii, anyAngle, sweeps, (middle, radius, start, sweep) => {
        const curves = arcToBeziers({ centre: middle, radius, start, sweep: radians(sweep) });
        const ends = [...curves.map(({ from }) => from), curves.at(-1)?.to ?? middle];
        expect(distance(ends[0] ?? middle, moved(middle, start, radius))).toBeLessThan(1e-8);
        curves.forEach((curve, n) => {
          const high = distance(middle, at(curve, 0.25)) / radius;
          expect(high).toBeGreaterThan(1 - 1e-9);
          expect(high).toBeLessThan(1 + 2.73e-4);
          expect(distance(curve.to, ends[n + 1] ?? middle)).toBeLessThan(1e-8);
          const halfway = start + (sweep * (n + 0.5)) / curves.length;
          const off = principalAngle(bearing(middle, at(curve, 0.5)) - halfway);
          expect(off).toBeCloseTo(0, 7);
        });
        const end = moved(middle, radians(start + sweep), radius);
        expect(distance(ends.at(-1) ?? middle, end)).toBeLessThan(1e-8);
      }),
    );
  });
});
