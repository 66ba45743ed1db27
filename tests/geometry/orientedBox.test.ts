import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { boundsOfBox, corners } from '../../src/geometry/orientedBox.ts';
import { signedArea } from '../../src/geometry/signedArea.ts';
import { fromDegrees, radians } from '../../src/units/radians.ts';

it('corners of a box turned by a quarter stand tall and run round it', () => {
  const box = { centre: { x: 10, y: 20 }, halfWidth: 4, halfHeight: 2, angle: fromDegrees(90) };
  const points = corners(box);
  expect(signedArea(points)).toBeCloseTo(8 * 4, 12);
  expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(12, 12);
  expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(24, 12);
});

it('bounds of a box are those of its corners', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const box = fc.record({
    centre: fc.record({ x: between(-50, 50), y: between(-50, 50) }),
    halfWidth: between(0, 4),
    halfHeight: between(0, 4),
    angle: fc.oneof(fc.constantFrom(0, Math.PI / 2, Math.PI), between(-4, 4)).map(radians),
  });
  fc.assert(
    fc.property(box, (own) => {
      const [bounds, around] = [boundsOfBox(own), boundsOf(corners(own))];
      for (const side of ['minX', 'minY', 'maxX', 'maxY'] as const)
        expect(bounds[side] === around?.[side]).toBe(true);
    }),
  );
});
