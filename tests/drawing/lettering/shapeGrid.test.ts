import fc from 'fast-check';
import { expect, it } from 'vitest';
import { makeShapeGrid } from '../../../src/drawing/lettering/shapeGrid.ts';
import { weights } from '../../../src/drawing/lettering/weight.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { boxShapes } from '../../../src/geometry/boxShapes.ts';
import type { OrientedBox } from '../../../src/geometry/orientedBox.ts';
import { radians } from '../../../src/units/radians.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyBox: fc.Arbitrary<OrientedBox<'paper'>> = fc.record({
  centre: fc.record({ x: between(-3, 3), y: between(-3, 3) }),
  halfWidth: between(0.01, 1.5),
  halfHeight: between(0.01, 0.2),
  angle: fc.oneof(fc.constant(0), between(-3, 3)).map(radians),
});

/** A box that is added, and whether it is dropped before the next one is. */
const anyDeed = fc.record({
  box: anyBox,
  weight: fc.constantFrom(...weights),
  dropped: fc.boolean(),
});

it('[D34] a grid finds what a look at every box finds, whatever was dropped before', () => {
  fc.assert(
    fc.property(fc.array(anyDeed, { maxLength: 40 }), anyBox, between(0, 0.3), (deeds, box, by) => {
      const grid = makeShapeGrid();
      for (const deed of deeds) {
        const n = grid.add(deed.box, deed.weight);
        if (deed.dropped) grid.drop(n);
      }
      const left = deeds.filter(({ dropped }) => !dropped);
      const under = left.filter((deed) => boxesOverlap(deed.box, box));
      const asked = boxShapes([box]);
      expect(grid.countAll(asked)).toBe(under.length);
      const counted = grid.count(asked);
      for (const weight of weights)
        expect(counted[weight]).toBe(under.filter((deed) => deed.weight === weight).length);
      const grown = { ...box, halfWidth: box.halfWidth + by, halfHeight: box.halfHeight + by };
      expect(grid.isClear(asked, by)).toBe(!left.some((deed) => boxesOverlap(deed.box, grown)));
    }),
  );
});
