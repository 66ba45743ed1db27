import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { isNear } from '../../src/drawing/isNear.ts';
import { drawPlan } from '../../src/drawing/plan/drawPlan.ts';
import { primitiveBounds } from '../../src/drawing/primitiveBounds.ts';
import { standsNear } from '../../src/drawing/standsNear.ts';
import { sampleYards } from './sampleYards.ts';

const clip = { minX: 1, minY: 2, maxX: 7.5, maxY: 9 };

it.each(sampleYards)('tells of $name on the ground what isNear tells on paper', (yard) => {
  const primitives = drawPlan(yard.site, yard.layout);
  const coordinate = fc.double({ min: -4000, max: 4000, noNaN: true });
  const ratio = fc.constantFrom(24, 96, 240, 600);
  fc.assert(
    fc.property(coordinate, coordinate, ratio, (x, y, inches) => {
      const projection = { origin: { x, y }, scale: 1 / inches };
      const near = standsNear(clip, projection);
      for (const one of primitives)
        expect(near(one)).toBe(isNear(primitiveBounds([one], projection), clip));
    }),
    { numRuns: 10 },
  );
});
