import fc from 'fast-check';
import { expect, it } from 'vitest';
import { intoSight } from '../../src/editor/intoSight.ts';

const seen = { minX: 0, minY: 30, maxX: 390, maxY: 230 };
const anywhere = fc.record({
  x: fc.integer({ min: -3000, max: 3000 }),
  y: fc.integer({ min: -3000, max: 3000 }),
});

it('a point in sight leaves the pad where it is; one off it comes to the middle', () => {
  expect(intoSight({ x: 100, y: 120 }, seen)).toEqual({ x: 0, y: 0 });
  expect(intoSight({ x: -500, y: 120 }, seen)).toEqual({ x: 695, y: 0 });
  expect(intoSight({ x: 100, y: 700 }, seen)).toEqual({ x: 0, y: -570 });
});

it('a point at the edge is moved no farther than it needs', () => {
  expect(intoSight({ x: 10, y: 220 }, seen)).toEqual({ x: 30, y: -30 });
});

it('every point ends up clear of every edge, and asks for nothing more', () => {
  fc.assert(
    fc.property(anywhere, (at) => {
      const by = intoSight(at, seen);
      const there = { x: at.x + by.x, y: at.y + by.y };
      expect(there.x).toBeGreaterThanOrEqual(40);
      expect(there.x).toBeLessThanOrEqual(350);
      expect(there.y).toBeGreaterThanOrEqual(70);
      expect(there.y).toBeLessThanOrEqual(190);
      const again = intoSight(there, seen);
      expect([Math.abs(again.x), Math.abs(again.y)]).toEqual([0, 0]);
    }),
  );
});
