import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { parallelCorners } from '../../src/geometry/parallelCorners.ts';

const square = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 60 },
  { x: 0, y: 60 },
];

describe('the corners of a parallel', () => {
  it('[G17] lie inside a square that runs counter-clockwise, on its left', () => {
    expect(parallelCorners(square, 10, 'closed')).toEqual([
      { x: 10, y: 10 },
      { x: 90, y: 10 },
      { x: 90, y: 50 },
      { x: 10, y: 50 },
    ]);
    expect(parallelCorners(square.slice(0, 3), -10, 'open')).toEqual([
      { x: 0, y: -10 },
      { x: 110, y: -10 },
      { x: 110, y: 60 },
    ]);
  });

  it('[G17] every side of the parallel lies at the distance from the side that it follows', () => {
    const place = fc.record({
      x: fc.integer({ min: 0, max: 50 }),
      y: fc.integer({ min: 0, max: 50 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(place, { minLength: 2, maxLength: 6, selector: ({ x, y }) => `${x} ${y}` }),
        fc.integer({ min: -9, max: 9 }),
        fc.constantFrom('open' as const, 'closed' as const),
        (points, off, how) => {
          const corners = parallelCorners(points, off, how);
          expect(corners).toHaveLength(points.length);
          points.slice(1).forEach((end, n) => {
            const start = points[n] ?? end;
            const length = distance(start, end);
            for (const corner of [corners[n], corners[n + 1]]) {
              const [x, y] = [(corner?.x ?? NaN) - start.x, (corner?.y ?? NaN) - start.y];
              const left = ((end.x - start.x) * y - (end.y - start.y) * x) / length;
              // where two sides fold back on each other there is no corner to have
              if (Math.hypot(x, y) < 1e4)
                expect(Math.abs(Math.abs(left) - Math.abs(off))).toBeLessThan(1e-6);
            }
          });
        },
      ),
      {
        // sides that all but fold back
        examples: [
          [
            [
              { x: 4, y: 5 },
              { x: 50, y: 29 },
              { x: 0, y: 3 },
              { x: 0, y: 0 },
            ],
            2,
            'open',
          ],
        ],
      },
    );
  });

  it('[G17] points on one spot stay one', () => {
    expect(parallelCorners([{ x: 1, y: 1 }], 5, 'open')).toEqual([{ x: 1, y: 1 }]);
  });
});
