import delaunay from 'cdt2d';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { edges } from '../../src/geometry/polygon.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { rotated } from '../../src/geometry/rotated.ts';
import { signedArea } from '../../src/geometry/signedArea.ts';
import { spot } from '../../src/geometry/tolerance.ts';
import { triangulate, type Triangulation } from '../../src/geometry/triangulated.ts';
import { radians } from '../../src/units/radians.ts';

const whole = fc.integer({ min: -2000, max: 2000 });
const shots = (least: number, most: number) =>
  fc.array(fc.record({ x: whole, y: whole }), { minLength: least, maxLength: most });

const cornersOf = (mesh: Triangulation, three: readonly number[]): SitePoint[] =>
  three.flatMap((n) => mesh.points[n] ?? []);

/**
 * Above 0 when d is in the circle through a, b and c, which go round counter-clockwise; 0 on it.
 * Exact for coordinates that are whole numbers.
 */
const inCircle = (a: SitePoint, b: SitePoint, c: SitePoint, d: SitePoint): bigint => {
  const [p, q, r] = [a, b, c].map(({ x, y }) => {
    const [east, north] = [BigInt(x - d.x), BigInt(y - d.y)];
    return { x: east, y: north, s: east * east + north * north };
  });
  if (p === undefined || q === undefined || r === undefined) throw new Error('three corners');
  return (
    p.x * (q.y * r.s - r.y * q.s) - p.y * (q.x * r.s - r.x * q.s) + p.s * (q.x * r.y - r.x * q.y)
  );
};

const named = (triangles: readonly (readonly number[])[]): string[] =>
  triangles.map((three) => three.toSorted((a, b) => a - b).join(' ')).sort();

const thinner = (corners: readonly SitePoint[]): boolean => {
  const long = Math.max(...edges(corners).map(({ start, end }) => distance(start, end)));
  return Math.abs(2 * signedArea(corners)) < spot * long;
};

describe('triangulate', () => {
  it('[G13] no point is in the circle of a triangle, by exact arithmetic', () => {
    fc.assert(
      fc.property(shots(3, 60), (points) => {
        const mesh = triangulate(points);
        for (const three of mesh.triangles) {
          const [a, b, c] = cornersOf(mesh, three);
          if (a === undefined || b === undefined || c === undefined) throw new Error('no corner');
          for (const d of points) expect(inCircle(a, b, c, d) <= 0n).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  // cdt2d (M. Lysenko) sweeps and flips; it shares no code with the library that we use
  it('[G13] the triangles are those of an independent library', () => {
    let compared = 0;
    fc.assert(
      fc.property(shots(3, 250), (drawn) => {
        const mesh = triangulate(drawn);
        const points = drawn.filter((_, n) => mesh.counts[n] === n);
        const known = triangulate(points);
        const theirs = delaunay(points.map(({ x, y }) => [x, y] as const));
        const tied = known.triangles.some((three) => {
          const [a, b, c] = cornersOf(known, three);
          if (a === undefined || b === undefined || c === undefined) return true;
          return points.some(
            (d, n) => !three.includes(n) && inCircle(a, b, c, d) === 0n && distance(a, d) > 0,
          );
        });
        fc.pre(!tied);
        const ours = named(known.triangles);
        const both = new Set(named(theirs));
        expect(ours.filter((one) => !both.has(one))).toEqual([]);
        // slivers on the rim are left out, and so is all that lies on one line
        const own = new Set(ours);
        const more = theirs.filter((three) => !own.has(named([three])[0] ?? ''));
        expect(more.filter((three) => !thinner(cornersOf(known, three)))).toEqual([]);
        compared += ours.length;
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(2000);
  });

  it('[G13] triangles run counter-clockwise and their areas add up to what the rim goes round', () => {
    fc.assert(
      fc.property(shots(3, 60), (points) => {
        const mesh = triangulate(points);
        const areas = mesh.triangles.map((three) => signedArea(cornersOf(mesh, three)));
        expect(areas.every((area) => area > 0)).toBe(true);
        const round = mesh.rim.map((ends) => cornersOf(mesh, ends));
        const within = round.map(([a, b]) =>
          a === undefined || b === undefined ? NaN : (a.x * b.y - a.y * b.x) / 2,
        );
        const sum = (parts: readonly number[]) => parts.reduce((all, part) => all + part, 0);
        expect(sum(within)).toBeCloseTo(sum(areas), 3);
      }),
    );
  });

  it('[G14] of points on one spot the first counts', () => {
    const square = [0, 100].flatMap((x) => [0, 100].map((y) => ({ x, y })));
    const mesh = triangulate([...square, { x: 100, y: 0.01 }, { x: 50, y: 50 }, { x: 50, y: 50 }]);
    expect(mesh.counts).toEqual([0, 1, 2, 3, 2, 5, 5]);
    expect(new Set(mesh.triangles.flat())).toEqual(new Set([0, 1, 2, 3, 5]));
    expect(mesh.triangles).toHaveLength(4);
  });

  it('[G14] points on one line have no triangles, however it is turned', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -9999, max: 9999 }), { maxLength: 30 }),
        fc.integer({ min: 0, max: 359 }),
        (along, degrees) => {
          const points = along.map((x): SitePoint =>
            rotated<'site'>({ x, y: 0 }, { x: 400, y: 77 }, radians((degrees * Math.PI) / 180)),
          );
          expect(triangulate(points).triangles).toEqual([]);
        },
      ),
    );
    expect(triangulate([]).triangles).toEqual([]);
    expect(
      triangulate([
        { x: 0, y: 0 },
        { x: 9, y: 4 },
      ]).rim,
    ).toEqual([]);
  });

  it('[G14] every shot of a turned grid is a corner', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 0, max: 359 }),
        whole,
        (columns, rows, degrees, off) => {
          const points = Array.from({ length: columns * rows }, (_, n) =>
            rotated<'site'>(
              { x: (n % columns) * 120, y: Math.floor(n / columns) * 96 },
              { x: off * 100, y: 77 },
              radians((degrees * Math.PI) / 180),
            ),
          );
          const mesh = triangulate(points);
          expect(new Set(mesh.triangles.flat()).size).toBe(points.length);
          expect(mesh.triangles).toHaveLength(2 * (columns - 1) * (rows - 1));
          expect(mesh.rim).toHaveLength(2 * (columns - 1) + 2 * (rows - 1));
        },
      ),
      { numRuns: 300 },
    );
  });

  it('[G14] a shot in the middle of an edge is a corner also where rounding has moved it inwards', () => {
    const line = [0, 120, 240, 360].map((x) => ({ x, y: x === 120 ? 1e-7 : 0 }));
    const mesh = triangulate([...line, { x: 180, y: 200 }]);
    expect(mesh.triangles).toHaveLength(3);
    expect(mesh.rim.map(([a, b]) => `${a} ${b}`).sort()).toEqual([
      '0 1',
      '1 2',
      '2 3',
      '3 4',
      '4 0',
    ]);
  });
});
