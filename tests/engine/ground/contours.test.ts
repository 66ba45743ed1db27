import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contourInterval,
  footIntervals,
  metricIntervals,
} from '../../../src/engine/ground/contourInterval.ts';
import { contours } from '../../../src/engine/ground/contours.ts';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { heightAt } from '../../../src/engine/ground/heightAt.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import { nearestOnSegment } from '../../../src/geometry/nearestOnSegment.ts';
import { inches } from '../../../src/units/inches.ts';
import { plane, rough, shotsOn, yard } from './shotsOn.ts';

describe('contours', () => {
  it('[R8] every place of a line has its height, with higher ground to the left', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const ground = groundOf(shotsOn(yard(seed, 50), rough));
        for (const { z, points, closed } of contours(ground, inches(12))) {
          expect(z % 12).toBeCloseTo(0, 12);
          const next = closed ? [...points.slice(1), ...points.slice(0, 1)] : points.slice(1);
          next.forEach((end, n) => {
            const start = points[n] ?? end;
            const middle = lerp(start, end, 0.5);
            const long = Math.hypot(end.x - start.x, end.y - start.y);
            expect(heightAt(ground, middle) ?? z).toBeCloseTo(z, 5);
            const left = {
              x: middle.x - ((end.y - start.y) / long) * 0.01,
              y: middle.y + ((end.x - start.x) / long) * 0.01,
            };
            if (long > 1) expect(heightAt(ground, left) ?? z).toBeGreaterThan(z - 1e-6);
          });
        }
      }),
      { numRuns: 30 },
    );
  });

  it('[R8] lines end at the rim or close, and are as many as the plane crosses levels', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const ground = groundOf(shotsOn(yard(seed, 50), rough));
        const rim = ground.mesh.rim.flatMap(([a, b]) => {
          const [start, end] = [ground.mesh.points[a], ground.mesh.points[b]];
          return start === undefined || end === undefined ? [] : [{ start, end }];
        });
        for (const { points, closed } of contours(ground, inches(12))) {
          for (const at of closed ? [] : [points[0], points.at(-1)]) {
            if (at === undefined) throw new Error('a line without ends');
            const off = rim.map((edge) => nearestOnSegment(at, edge).distance);
            expect(Math.min(...off)).toBeLessThan(1e-6);
          }
        }
      }),
      { numRuns: 30 },
    );
    // 600 in of rise with the middle at 5: levels from -295 to 305, every 60
    const slope = contours(groundOf(shotsOn(yard(7, 40), plane(5, 0.1, 0))), inches(60));
    expect(slope.map(({ z }) => z)).toEqual([-240, -180, -120, -60, 0, 60, 120, 180, 240, 300]);
    for (const { z, points } of slope) {
      for (const { x } of points) expect(x).toBeCloseTo((z - 5) / 0.1, 6);
    }
  });

  it('[R8] a hilltop is closed and runs round with the top on its left', () => {
    const shots = [...shotsOn(yard(1, 0), () => 0), { id: 'top', x: 0, y: 0, z: 30 }];
    const [low, ...rest] = contours(groundOf(shots), inches(12));
    expect(rest).toHaveLength(1);
    expect(low?.closed).toBe(true);
    expect(low?.points).toHaveLength(4);
    // 12 of 30 up: 0.6 of the way from the top to each corner
    for (const { x, y } of low?.points ?? []) {
      expect(Math.abs(x)).toBeCloseTo(1800, 9);
      expect(Math.abs(y)).toBeCloseTo(1800, 9);
    }
  });

  it('[R8] level ground and no ground have no lines, and no interval is refused', () => {
    const level = groundOf(shotsOn(yard(1, 9), () => 24));
    expect(contours(level, inches(12))).toEqual([]);
    expect(contours(groundOf([]), inches(0))).toEqual([]);
    expect(() => contours(level, inches(0))).toThrow('contour interval 0 in: expected above 0');
  });

  it('[R8] the interval is the smallest that gives twelve lines or fewer', () => {
    const chosen = (relief: number) => contourInterval(inches(relief), footIntervals);
    expect([0, 12, 13, 30, 144, 145, 7200].map(chosen)).toEqual([1, 1, 2, 3, 12, 24, 600]);
    expect(chosen(9000)).toBe(1200);
    expect(contourInterval(inches(1000 / 25.4), metricIntervals)).toBeCloseTo(100 / 25.4, 12);
  });
});
