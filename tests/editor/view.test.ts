import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitTo,
  panBy,
  scaleLimits,
  toGround,
  toScreen,
  toSite,
  zoomAt,
} from '../../src/editor/view.ts';
import type { View } from '../../src/store/view.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const view = fc.record({
  scale: number(scaleLimits.least, scaleLimits.most),
  x: number(-1e4, 1e4),
  y: number(-1e4, 1e4),
});
const pixel = fc.record({ x: number(0, 3000), y: number(0, 3000) });
const ground = fc.record({ x: number(-1e5, 1e5), y: number(-1e5, 1e5) });

const near = (a: { x: number; y: number }, b: { x: number; y: number }, slack: number) => {
  expect(Math.abs(a.x - b.x)).toBeLessThanOrEqual(slack);
  expect(Math.abs(a.y - b.y)).toBeLessThanOrEqual(slack);
};

describe('view', () => {
  it('[E1] ground and screen turn into each other, north up', () => {
    fc.assert(
      fc.property(view, ground, (seen, at) => near(toSite(seen, toScreen(seen, at)), at, 1e-4)),
    );
    const seen: View = { scale: 2, x: 100, y: 300 };
    expect(toScreen(seen, { x: 10, y: 50 })).toEqual({ x: 120, y: 200 });
    expect(toGround(seen, 44)).toBe(22);
  });

  it('[E1] what is under the hand stays there while zooming, within the limits', () => {
    fc.assert(
      fc.property(view, pixel, number(1e-6, 1e6), (seen, at, factor) => {
        const next = zoomAt(seen, at, factor);
        expect(next.scale).toBeGreaterThanOrEqual(scaleLimits.least);
        expect(next.scale).toBeLessThanOrEqual(scaleLimits.most);
        near(toScreen(next, toSite(seen, at)), at, 1e-6 * (1 + next.scale / seen.scale) * 1e4);
      }),
    );
    const seen: View = { scale: 1, x: 7, y: 9 };
    for (const factor of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(zoomAt(seen, { x: 1, y: 1 }, factor)).toBe(seen);
    }
  });

  it('[E1] the ground goes with the hand while panning', () => {
    fc.assert(
      fc.property(view, pixel, pixel, (seen, from, by) => {
        const at = toSite(seen, from);
        const there = toScreen(panBy(seen, by), at);
        near(there, { x: from.x + by.x, y: from.y + by.y }, 1e-5);
      }),
    );
  });

  it('[E1] a fitted view shows all of the bounds inside its margin, in the middle', () => {
    const bounds = fc.record({
      minX: number(-5e5, 0),
      minY: number(-5e5, 0),
      maxX: number(0, 5e5),
      maxY: number(0, 5e5),
    });
    fc.assert(
      fc.property(bounds, number(300, 3000), number(300, 3000), (all, width, height) => {
        const seen = fitTo(all, { width, height }, 24);
        const low = toScreen(seen, { x: all.minX, y: all.minY });
        const high = toScreen(seen, { x: all.maxX, y: all.maxY });
        for (const [a, b, size] of [
          [low.x, high.x, width],
          [high.y, low.y, height],
        ] as const) {
          expect(a).toBeGreaterThanOrEqual(24 - 1e-6);
          expect(b).toBeLessThanOrEqual(size - 24 + 1e-6);
          expect(a + b).toBeCloseTo(size, 5);
        }
      }),
    );
  });

  it('[E1] one mark alone is shown with ground around it', () => {
    const spot = { minX: 50, minY: 60, maxX: 50, maxY: 60 };
    const seen = fitTo(spot, { width: 480, height: 900 }, 0);
    expect(seen.scale).toBe(2);
    expect(toScreen(seen, { x: 50, y: 60 })).toEqual({ x: 240, y: 450 });
    expect(Number.isFinite(fitTo(spot, { width: 0, height: 0 }, 24).scale)).toBe(true);
  });
});
