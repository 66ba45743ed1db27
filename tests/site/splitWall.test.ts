import fc from 'fast-check';
import { expect, it } from 'vitest';
import { splitWall } from '../../src/site/splitWall.ts';
import type { WallTop } from '../../src/site/wallTop.ts';
import { inches } from '../../src/units/inches.ts';

it('[S29] the parts of a wall have its rise and its steps together', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 200 }),
      fc.integer({ min: -400, max: 400 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (steps, rise, share) => {
        const wall: WallTop = {
          width: inches(8),
          height: inches(24),
          rise: inches(rise),
          steps,
          set: { kind: 'plate', side: inches(8) },
        };
        const [first, second] = splitWall(wall, share);
        expect(first.steps + second.steps).toBe(steps);
        expect(first.rise + second.rise).toBeCloseTo(rise, 9);
        expect(first.rise * rise).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});
