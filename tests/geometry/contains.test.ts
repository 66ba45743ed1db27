import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add } from '../../src/geometry/add.ts';
import { contains } from '../../src/geometry/contains.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import { midpoint } from '../../src/geometry/midpoint.ts';
import { rigidMotion, starPolygon } from './arbitraries.ts';

const hollow = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 5, y: 4 },
  { x: 0, y: 10 },
];

describe('contains', () => {
  it('tells inside from outside, also across a notch', () => {
    expect(contains(hollow, { x: 1, y: 5 })).toBe(true);
    expect(contains(hollow, { x: 5, y: 5 })).toBe(false);
    expect(contains(hollow, { x: -1, y: 4 })).toBe(false);
  });

  it('[G6] a corner and an edge are inside', () => {
    expect(contains(hollow, { x: 5, y: 4 })).toBe(true);
    expect(contains(hollow, { x: 10, y: 3 })).toBe(true);
  });

  it('[G6] what is enclosed twice is outside', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    expect(contains(square, { x: 1, y: 1 })).toBe(true);
    expect(contains([...square, ...square], { x: 1, y: 1 })).toBe(false);
  });

  it('nothing lies in a polygon without points', () => {
    expect(contains([], { x: 0, y: 0 })).toBe(false);
  });

  it('[G6] every point of every edge is inside, wherever the polygon lies', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(starPolygon, rigidMotion, fc.nat(), share, (polygon, motion, n, along) => {
        const turned = polygon.map(motion);
        const start = turned[n % turned.length] ?? { x: 0, y: 0 };
        const end = turned[(n + 1) % turned.length] ?? start;
        expect(contains(turned, lerp(start, end, along))).toBe(true);
      }),
    );
  });

  it('[G2] agrees with the way a star was made: inside towards its middle, outside away from it', () => {
    const star = fc.record({
      radii: fc.array(fc.integer({ min: 64, max: 640 }), { minLength: 5, maxLength: 12 }),
      pick: fc.nat(),
    });
    fc.assert(
      fc.property(star, rigidMotion, ({ radii, pick }, motion) => {
        const points = radii.map((radius, n) => {
          const angle = (2 * Math.PI * n) / radii.length;
          return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
        });
        const spoke = points[pick % points.length] ?? { x: 0, y: 0 };
        const polygon = points.map(motion);
        expect(contains(polygon, motion(midpoint({ x: 0, y: 0 }, spoke)))).toBe(true);
        expect(contains(polygon, motion(add(spoke, lerp({ x: 0, y: 0 }, spoke, 0.1))))).toBe(false);
      }),
    );
  });
});
