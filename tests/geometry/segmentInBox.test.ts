import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { segmentInBox } from '../../src/geometry/segmentInBox.ts';

const box = { minX: -2, minY: -1, maxX: 3, maxY: 2 };
const at = (x: number, y: number) => ({ x, y });

describe('segments and boxes', () => {
  it.each([
    [at(-5, 0), at(5, 0), true],
    [at(0, 0), at(1, 1), true],
    [at(-5, 5), at(5, 5), false],
    [at(3, 2), at(9, 9), true],
    [at(-4, 1), at(-1, 4), false],
    [at(3.1, -4), at(3.1, 4), false],
    [at(1, 1), at(1, 1), true],
    [at(4, 1), at(4, 1), false],
  ])('[G45] from %j to %j: %s', (start, end, inside) => {
    expect(segmentInBox({ start, end }, box)).toBe(inside);
    expect(segmentInBox({ start: end, end: start }, box)).toBe(inside);
  });

  it('[G45] as many points along it say', () => {
    const place = fc.record({
      x: fc.double({ min: -6, max: 6, noNaN: true }),
      y: fc.double({ min: -6, max: 6, noNaN: true }),
    });
    fc.assert(
      fc.property(place, place, (start, end) => {
        const hits = Array.from({ length: 2001 }, (_, n) => n / 2000).some((share) => {
          const x = start.x + share * (end.x - start.x);
          const y = start.y + share * (end.y - start.y);
          return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
        });
        // a corner may be cut between two of the points
        if (hits) expect(segmentInBox({ start, end }, box)).toBe(true);
        const smaller = { minX: -1.98, minY: -0.98, maxX: 2.98, maxY: 1.98 };
        if (segmentInBox({ start, end }, smaller)) expect(hits).toBe(true);
      }),
    );
  });
});
