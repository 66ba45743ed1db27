import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { located } from '../../src/geometry/located.ts';
import { stationsAcross } from '../../src/geometry/stationsAcross.ts';
import { spot } from '../../src/geometry/tolerance.ts';
import { triangulate } from '../../src/geometry/triangulated.ts';
import { scatter } from './scatter.ts';

const square = [0, 100].flatMap((x) => [0, 100].map((y) => ({ x, y })));

describe('stationsAcross', () => {
  it('[G16] between two stations there is one triangle, or none', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 0, max: 60 }), (seed, n) => {
        const mesh = triangulate(scatter(seed, n, 2000));
        const [start = { x: 0, y: 0 }, end = { x: 0, y: 0 }] = scatter(seed + 1, 2, 3000);
        const length = distance(start, end);
        const stations = stationsAcross(mesh, { start, end });
        expect(stations[0]).toBe(0);
        expect(stations.at(-1)).toBe(length);
        stations.slice(1).forEach((to, k) => {
          const from = stations[k] ?? 0;
          expect(to - from).toBeGreaterThanOrEqual(spot);
          // away from the ends, which are corners or edges
          const inside = [0.05, 0.3, 0.7, 0.95]
            .map((share) => from + share * (to - from))
            .filter((along) => along - from > 3 * spot && to - along > 3 * spot)
            .map((along) => located(mesh, lerp(start, end, along / length))?.triangle ?? -1);
          expect(new Set(inside).size).toBeLessThanOrEqual(1);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('[G16] it stops at corners, also along the rim and where rounding has moved it off', () => {
    const mesh = triangulate([...square, { x: 50, y: 0 }, { x: 50, y: 50 }]);
    const along = (y: number) =>
      stationsAcross(mesh, { start: { x: -10, y }, end: { x: 110, y } }).map((at) =>
        Math.round(at),
      );
    expect(along(0)).toEqual([0, 10, 60, 110, 120]);
    expect(along(-1e-9)).toEqual([0, 10, 60, 110, 120]);
    expect(along(50)).toEqual([0, 10, 60, 110, 120]);
  });

  it('[G16] a segment without length has its start only', () => {
    const at = { x: 5, y: 5 };
    expect(stationsAcross(triangulate(square), { start: at, end: at })).toEqual([0]);
    expect(stationsAcross(triangulate([]), { start: at, end: { x: 8, y: 9 } })).toEqual([0, 5]);
  });
});
