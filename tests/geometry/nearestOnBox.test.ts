import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearestOnBox } from '../../src/geometry/nearestOnBox.ts';
import { nearestOnSegment } from '../../src/geometry/nearestOnSegment.ts';
import { corners, type OrientedBox } from '../../src/geometry/orientedBox.ts';
import { edges } from '../../src/geometry/polygon.ts';
import { radians } from '../../src/units/radians.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyBox: fc.Arbitrary<OrientedBox<'paper'>> = fc.record({
  centre: fc.record({ x: between(-4, 4), y: between(-4, 4) }),
  halfWidth: between(0, 3),
  halfHeight: between(0, 1),
  angle: fc.oneof(fc.constantFrom(0, Math.PI / 2), between(-3, 3)).map(radians),
});

it('[D34] is the very point of the nearest edge, of the first where several are as near', () => {
  const anyPoint = fc.record({ x: between(-6, 6), y: between(-6, 6) });
  fc.assert(
    fc.property(anyPoint, anyBox, (point, box) => {
      const all = edges(corners(box)).map((edge) => nearestOnSegment(point, edge));
      const least = Math.min(...all.map(({ distance }) => distance));
      const first = all.find(({ distance }) => distance === least);
      expect(nearestOnBox(point, box)).toEqual(first?.point);
    }),
  );
});
