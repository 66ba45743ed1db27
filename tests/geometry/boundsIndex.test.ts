import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOf, boundsOverlap, type Bounds } from '../../src/geometry/bounds.ts';
import { boundsIndex, foundIn, wholeOf } from '../../src/geometry/boundsIndex.ts';
import { sitePoint } from './arbitraries.ts';

const bounds = fc
  .tuple(
    sitePoint,
    fc.oneof(fc.constant(0), fc.integer({ max: 5000, min: 0 })),
    fc.integer({ max: 500, min: 0 }),
  )
  .map(([{ x, y }, wide, high]): Bounds => ({
    minX: x,
    minY: y,
    maxX: x + wide * 64,
    maxY: y + high * 64,
  }));

const many = fc.oneof(
  fc.array(bounds, { maxLength: 40 }),
  fc.array(bounds, { minLength: 300, maxLength: 700, size: 'max' }),
);

describe('boundsIndex', () => {
  it('[G51] finds what a scan of all finds, in the same order', () => {
    fc.assert(
      fc.property(many, bounds, (boxes, box) => {
        const found = foundIn(
          boundsIndex(boxes, (one) => one),
          box,
        );
        expect(found).toEqual(boxes.filter((one) => boundsOverlap(one, box)));
      }),
    );
  });

  it('[G51] finds each of all by its own corner, where many lie on one spot too', () => {
    fc.assert(
      fc.property(many, fc.nat(), (boxes, pick) => {
        const twice = boxes.flatMap((box) => [box, box]).map((box, n) => ({ box, n }));
        const index = boundsIndex(twice, ({ box }) => box);
        const one = twice[pick % Math.max(1, twice.length)];
        if (one === undefined) return;
        const { minX: x, maxY: y } = one.box;
        const there = foundIn(index, { minX: x, minY: y, maxX: x, maxY: y }).map(({ n }) => n);
        expect(there).toContain(one.n);
        expect(there).toEqual(there.toSorted((a, b) => a - b));
      }),
    );
  });

  it('[G51] holds all of them, and nothing of what is nowhere', () => {
    fc.assert(
      fc.property(many, (boxes) => {
        const corners = boxes.flatMap(({ minX, minY, maxX, maxY }) => [
          { x: minX, y: minY },
          { x: maxX, y: maxY },
        ]);
        expect(wholeOf(boundsIndex(boxes, (one) => one))).toEqual(boundsOf(corners));
      }),
    );
    const points = [{ x: Number.NaN, y: 0 }, { x: 3, y: 4 }, null];
    const index = boundsIndex(points, (point) => (point === null ? null : boundsOf([point])));
    expect(foundIn(index, { minX: -9, minY: -9, maxX: 9, maxY: 9 })).toEqual([{ x: 3, y: 4 }]);
  });
});
