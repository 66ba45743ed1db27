import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boxesOverlap } from './boxesOverlap.ts';
import { boxShapes } from '../../src/geometry/boxShapes.ts';
import type { OrientedBox } from '../../src/geometry/orientedBox.ts';
import { shapesOverlap } from '../../src/geometry/shapesOverlap.ts';
import { radians } from '../../src/units/radians.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyBox: fc.Arbitrary<OrientedBox<'paper'>> = fc.record({
  centre: fc.record({ x: between(0, 10), y: between(0, 10) }),
  halfWidth: between(0.1, 4),
  halfHeight: between(0.1, 2),
  angle: fc.oneof(fc.constantFrom(0, Math.PI / 2), between(-3, 3)).map(radians),
});

it('[G10] a margin grows the second box on every side', () => {
  fc.assert(
    fc.property(anyBox, anyBox, between(0, 3), (a, b, margin) => {
      const [halfWidth, halfHeight] = [b.halfWidth + margin, b.halfHeight + margin];
      expect(shapesOverlap(boxShapes([a]), 0, boxShapes([b]), margin)).toBe(
        boxesOverlap(a, { ...b, halfWidth, halfHeight }),
      );
    }),
    { numRuns: 500 },
  );
});
