import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOf, boundsOverlap, expandBounds, unionOfBounds } from '../../src/geometry/bounds.ts';
import { sitePoint } from './arbitraries.ts';

const box = { minX: 0, minY: 0, maxX: 10, maxY: 4 };

describe('bounds', () => {
  it('[G11] hold every point, and each edge touches one', () => {
    fc.assert(
      fc.property(fc.array(sitePoint, { minLength: 1 }), (points) => {
        const bounds = boundsOf(points);
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        xs.sort((a, b) => a - b);
        ys.sort((a, b) => a - b);
        expect(bounds).toEqual({
          minX: xs[0],
          minY: ys[0],
          maxX: xs.at(-1),
          maxY: ys.at(-1),
        });
      }),
    );
  });

  it('of no points are none', () => {
    expect(boundsOf([])).toBeNull();
  });

  it('[G11] of two sets are the union of the bounds of each', () => {
    const some = fc.array(sitePoint, { minLength: 1 });
    fc.assert(
      fc.property(some, some, (a, b) => {
        const [ofA, ofB] = [boundsOf(a), boundsOf(b)];
        if (ofA === null || ofB === null) throw new Error('bounds of points');
        expect(unionOfBounds(ofA, ofB)).toEqual(boundsOf([...a, ...b]));
      }),
    );
  });

  it('grow on every side and shrink no farther than their middle', () => {
    expect(expandBounds(box, 1)).toEqual({ minX: -1, minY: -1, maxX: 11, maxY: 5 });
    expect(expandBounds(box, -3)).toEqual({ minX: 3, minY: 2, maxX: 7, maxY: 2 });
    expect(expandBounds(box, -6)).toEqual({ minX: 5, minY: 2, maxX: 5, maxY: 2 });
  });

  it('overlap when they touch, not when they are apart on one axis', () => {
    for (const [x, y] of [
      [10, 4],
      [10, -5],
      [-2, 4],
      [-2, -5],
    ] as const) {
      const corner = { minX: x, minY: y, maxX: x + 2, maxY: y + 5 };
      expect([x, y, boundsOverlap(box, corner)]).toEqual([x, y, true]);
    }
    expect(boundsOverlap(box, { minX: 2, minY: 4.5, maxX: 12, maxY: 9 })).toBe(false);
    expect(boundsOverlap(box, { minX: -9, minY: 1, maxX: -1, maxY: 2 })).toBe(false);
  });
});
