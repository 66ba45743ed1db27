import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { nearestOnSegment } from '../../src/geometry/nearestOnSegment.ts';
import { throughCapsule } from '../../src/geometry/throughCapsule.ts';

const anyPoint = fc.record({
  x: fc.integer({ min: -200, max: 200 }),
  y: fc.integer({ min: -200, max: 200 }),
});
const anySegment = fc.record({ start: anyPoint, end: anyPoint });

describe('a line through all that lies near a segment', () => {
  it('[G12] every place of the piece is within the radius, and none outside of it is', () => {
    fc.assert(
      fc.property(
        anySegment,
        anySegment,
        fc.integer({ min: 1, max: 80 }),
        fc.integer({ min: -300, max: 300 }),
        (line, axis, radius, at) => {
          const length = distance(line.start, line.end);
          fc.pre(length > 0);
          const piece = throughCapsule(line, axis, radius);
          const place = lerp(line.start, line.end, at / length);
          const off = nearestOnSegment(place, axis).distance - radius;
          fc.pre(Math.abs(off) > 1e-6);
          expect(piece !== null && at > piece.from && at < piece.to).toBe(off < 0);
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('[G12] straight across a band it is twice the radius, at a slant more by the secant', () => {
    const axis = { start: { x: 0, y: -100 }, end: { x: 0, y: 100 } };
    expect(throughCapsule({ start: { x: -50, y: 0 }, end: { x: 50, y: 0 } }, axis, 18)).toEqual({
      from: 32,
      to: 68,
    });
    const slant = throughCapsule({ start: { x: -50, y: -50 }, end: { x: 50, y: 50 } }, axis, 18);
    expect((slant?.to ?? 0) - (slant?.from ?? 0)).toBeCloseTo(36 * Math.SQRT2, 9);
  });

  it('[G12] a line without direction, or one that passes by, has none', () => {
    const axis = { start: { x: 0, y: 0 }, end: { x: 0, y: 0 } };
    expect(throughCapsule({ start: { x: 1, y: 1 }, end: { x: 1, y: 1 } }, axis, 9)).toBeNull();
    expect(throughCapsule({ start: { x: 1, y: 10 }, end: { x: 2, y: 10 } }, axis, 9)).toBeNull();
  });
});
