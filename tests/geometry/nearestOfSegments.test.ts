import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestOfSegments } from '../../src/geometry/nearestOfSegments.ts';

const at = (x: number, y: number) => ({ x, y });

describe('how near segments come', () => {
  it('[G46] crossing is 0, else from an end of one of them', () => {
    const flat = { start: at(0, 0), end: at(10, 0) };
    expect(nearestOfSegments(flat, { start: at(4, -3), end: at(4, 3) })).toEqual({
      at: at(4, 0),
      distance: 0,
    });
    expect(nearestOfSegments(flat, { start: at(4, 2), end: at(4, 9) })).toEqual({
      at: at(4, 0),
      distance: 2,
    });
    expect(nearestOfSegments(flat, { start: at(13, 4), end: at(20, 4) })).toEqual({
      at: at(10, 0),
      distance: 5,
    });
  });

  it('[G46] a segment of next to no length is near where it lies', () => {
    const speck = { start: at(0, 0), end: at(0, 5e-324) };
    const off = { start: at(0, -0.3), end: at(-4, 0) };
    expect(nearestOfSegments(speck, off).distance).toBeCloseTo(1.2 / Math.hypot(4, 0.3));
  });

  it('[G46] as the nearest of many points of both', () => {
    const place = fc.record({
      x: fc.double({ min: -10, max: 10, noNaN: true }),
      y: fc.double({ min: -10, max: 10, noNaN: true }),
    });
    const segment = fc.record({ start: place, end: place });
    const points = ({ start, end }: { start: { x: number; y: number }; end: typeof start }) =>
      Array.from({ length: 101 }, (_, n) => ({
        x: start.x + (n / 100) * (end.x - start.x),
        y: start.y + (n / 100) * (end.y - start.y),
      }));
    fc.assert(
      fc.property(segment, segment, (a, b) => {
        const others = points(b);
        const brute = Math.min(
          ...points(a).map((p) => Math.min(...others.map((q) => Math.hypot(p.x - q.x, p.y - q.y)))),
        );
        const { distance } = nearestOfSegments(a, b);
        expect(distance).toBeLessThanOrEqual(brute + 1e-9);
        // neighbouring points are up to 0.29 apart
        expect(distance).toBeGreaterThan(brute - 0.3);
      }),
    );
  });
});
