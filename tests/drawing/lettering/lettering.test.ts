import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualCost, weigh } from '../../../src/drawing/lettering/coverCost.ts';
import { makeLettering } from '../../../src/drawing/lettering/lettering.ts';
import { weights } from '../../../src/drawing/lettering/weight.ts';
import type { OrientedBox } from '../../../src/geometry/orientedBox.ts';
import { radians } from '../../../src/units/radians.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyBox: fc.Arbitrary<OrientedBox<'paper'>> = fc.record({
  centre: fc.record({ x: between(0, 3), y: between(0, 3) }),
  halfWidth: between(0.01, 0.8),
  halfHeight: between(0.01, 0.2),
  angle: between(-3, 3).map(radians),
});

const drawn = fc.array(fc.tuple(anyBox, fc.constantFrom(...weights)), { maxLength: 30 });

it('[D34] counts leaders alone, and counts on until a place is lost', () => {
  fc.assert(
    fc.property(drawn, anyBox, fc.integer({ min: 0, max: 900 }), (lines, box, limit) => {
      const room = makeLettering(null, []);
      for (const [line, weight] of lines) room.avoid(line, weight);
      const all = room.covers(box);
      expect(room.leaders(box)).toBe(all.leader);
      const cost = weigh(all, usualCost);
      const told = weigh(room.covers(box, { cost: usualCost, limit }), usualCost);
      if (cost > limit) expect(told).toBeGreaterThan(limit);
      else expect(told).toBe(cost);
    }),
  );
});
