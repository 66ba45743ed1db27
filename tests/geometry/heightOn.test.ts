import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightOn } from '../../src/geometry/heightOn.ts';
import { located } from '../../src/geometry/located.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { rotated } from '../../src/geometry/rotated.ts';
import { triangulate } from '../../src/geometry/triangulated.ts';
import { scatter } from './scatter.ts';
import { radians } from '../../src/units/radians.ts';

const whole = fc.integer({ min: -3000, max: 3000 });
const place = fc.record({ x: whole, y: whole });
const shots = fc.array(place, { minLength: 3, maxLength: 80 });

describe('heightOn', () => {
  it('[G15] on a plane it is the plane, and outside of the points there is none', () => {
    fc.assert(
      fc.property(shots, place, whole, whole, (points, at, east, north) => {
        const plane = ({ x, y }: SitePoint) => 40 + (east * x + north * y) / 10_000;
        const mesh = triangulate(points);
        const height = heightOn(mesh, points.map(plane), at);
        const middle = heightOn(mesh, points.map(plane), {
          x: mesh.triangles[0]?.reduce((sum, n) => sum + (points[n]?.x ?? 0) / 3, 0) ?? 0,
          y: mesh.triangles[0]?.reduce((sum, n) => sum + (points[n]?.y ?? 0) / 3, 0) ?? 0,
        });
        expect(middle === null).toBe(mesh.triangles.length === 0);
        if (height !== null) expect(height).toBeCloseTo(plane(at), 1);
        const box = [at.x, at.y, -at.x, -at.y];
        const most = [
          Math.max(...points.map(({ x }) => x)),
          Math.max(...points.map(({ y }) => y)),
          -Math.min(...points.map(({ x }) => x)),
          -Math.min(...points.map(({ y }) => y)),
        ];
        if (box.some((reach, n) => reach > (most[n] ?? 0))) expect(height).toBeNull();
      }),
      { numRuns: 500 },
    );
  });

  it('[G15] at a point it is the height of that point to the last bit', () => {
    fc.assert(
      fc.property(shots, (points) => {
        const mesh = triangulate(points);
        const heights = points.map((_, n) => n * 1.1 + 0.3);
        for (const n of new Set(mesh.triangles.flat())) {
          expect(heightOn(mesh, heights, points[n] ?? { x: NaN, y: NaN })).toBe(heights[n]);
        }
      }),
    );
  });

  it('[G15] turning and moving points and place changes no height', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 3, max: 80 }), whole, place, (seed, n, angle, at) => {
        const points = scatter(seed, n, 6000);
        const heights = points.map(({ x, y }) => Math.hypot(x, y) / 10);
        const turned = ({ x, y }: SitePoint): SitePoint =>
          rotated<'site'>({ x: x + 91_234, y: y - 5001 }, { x: 0, y: 0 }, radians(angle));
        const plain = heightOn(triangulate(points), heights, at);
        const moved = heightOn(triangulate(points.map(turned)), heights, turned(at));
        expect(moved === null).toBe(plain === null);
        if (plain !== null) expect(moved).toBeCloseTo(plain, 5);
      }),
    );
  });

  it('[G15] a place is found in the triangle that a look through all of them finds', () => {
    fc.assert(
      fc.property(shots, fc.array(place, { minLength: 20, maxLength: 20 }), (points, places) => {
        const mesh = triangulate(points);
        for (const at of places) {
          const over = mesh.triangles.filter((three) => {
            const corners = three.map((n) => points[n] ?? at);
            return corners.every((a, k) => {
              const b = corners[(k + 1) % 3] ?? a;
              return (b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x) >= 0;
            });
          });
          const found = located(mesh, at);
          if (over.length > 0) expect(over).toContain(mesh.triangles[found?.triangle ?? -1]);
          expect(found?.shares.reduce((sum, share) => sum + share, 0) ?? 1).toBeCloseTo(1, 12);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('[G15] a place within 1/64 in of the rim is on it', () => {
    const mesh = triangulate([
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 100 },
    ]);
    expect(heightOn(mesh, [0, 10, 0], { x: 50, y: -0.01 })).toBeCloseTo(5, 2);
    expect(heightOn(mesh, [0, 10, 0], { x: 50, y: -0.02 })).toBeNull();
  });
});
