import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { boxShapes } from '../../src/geometry/boxShapes.ts';
import { corners } from '../../src/geometry/orientedBox.ts';
import { radians } from '../../src/units/radians.ts';

it('[G10] a shape begins with the bounds of the corners of its box', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const box = fc.record({
    centre: fc.record({ x: between(-50, 50), y: between(-50, 50) }),
    halfWidth: between(0, 4),
    halfHeight: between(0, 4),
    angle: fc.oneof(fc.constantFrom(0, Math.PI / 2, Math.PI), between(-4, 4)).map(radians),
  });
  fc.assert(
    fc.property(box, (own) => {
      const around = boundsOf(corners(own));
      const sides = (['minX', 'minY', 'maxX', 'maxY'] as const).map((side) => around?.[side]);
      boxShapes([own])
        .slice(0, 4)
        .forEach((side, n) => expect(side === sides[n]).toBe(true));
    }),
  );
});
