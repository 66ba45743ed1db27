import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains } from '../../src/geometry/contains.ts';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { nearestOnSegment } from '../../src/geometry/nearestOnSegment.ts';
import { piecesInside } from '../../src/geometry/piecesInside.ts';
import { edges } from '../../src/geometry/polygon.ts';

const anyPoint = fc.record({
  x: fc.integer({ min: -20, max: 20 }),
  y: fc.integer({ min: -20, max: 20 }),
});

const triangle = [
  { x: 0, y: 0 },
  { x: 300, y: 0 },
  { x: 0, y: 300 },
];

describe('the pieces of a segment in a polygon', () => {
  it('[G50] a place is in a piece exactly when it is in the polygon, notches and crossings too', () => {
    fc.assert(
      fc.property(
        fc.array(anyPoint, { minLength: 3, maxLength: 8 }),
        fc.record({ start: anyPoint, end: anyPoint }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (polygon, segment, share) => {
          const place = lerp(segment.start, segment.end, share);
          const away = edges(polygon).map((edge) => nearestOnSegment(place, edge).distance);
          // on the edge either answer is right to within rounding
          fc.pre(Math.min(...away) > 1e-4 && distance(segment.start, segment.end) > 0);
          const at = share * distance(segment.start, segment.end);
          const inPiece = piecesInside(segment, polygon).some(
            ({ from, to }) => at >= from && at <= to,
          );
          expect(inPiece).toBe(contains(polygon, place));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('[G50] along an edge it is inside for as long as the edge, at a corner alone it is not', () => {
    const along = { start: { x: -100, y: 0 }, end: { x: 500, y: 0 } };
    expect(piecesInside(along, triangle)).toEqual([{ from: 100, to: 400 }]);
    const past = { start: { x: 0, y: 600 }, end: { x: 600, y: 0 } };
    expect(piecesInside(past, triangle)).toEqual([]);
    const touching = { start: { x: -50, y: 300 }, end: { x: 50, y: 300 } };
    expect(piecesInside(touching, triangle)).toEqual([]);
  });
});
