import fc from 'fast-check';
import { expect, it } from 'vitest';
import { selfCrossing } from '../../src/geometry/selfCrossing.ts';

const corner = fc.record({
  x: fc.integer({ min: 0, max: 12 }),
  y: fc.integer({ min: 0, max: 12 }),
});
const area = (a: { x: number; y: number }, b: typeof a, c: typeof a) =>
  Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));

it('[G23] finds a crossing when, and only when, two sides cross between their ends', () => {
  let crossed = 0;
  fc.assert(
    fc.property(fc.array(corner, { minLength: 3, maxLength: 7 }), (ring) => {
      const sides = ring.map((a, n) => [a, ring[(n + 1) % ring.length] ?? a] as const);
      // whole numbers: on which side of each other the four ends lie is exact
      const any = sides.some(([a, b]) =>
        sides.some(
          ([c, d]) => area(a, b, c) * area(a, b, d) < 0 && area(c, d, a) * area(c, d, b) < 0,
        ),
      );
      crossed += Number(any);
      expect(selfCrossing(ring) !== null).toBe(any);
    }),
    { numRuns: 500 },
  );
  expect(crossed).toBeGreaterThan(50);
});

it('[G23] corners that touch are no crossing', () => {
  const hourglass = [
    { x: 0, y: 0 },
    { x: 5, y: 5 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 5, y: 5 },
    { x: 0, y: 10 },
  ];
  expect(selfCrossing(hourglass)).toBeNull();
});
