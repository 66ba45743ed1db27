import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { covarianceOf } from '../../../src/engine/survey/datum.ts';
import { spreads } from '../../../src/engine/survey/ellipse.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { heldOf } from '../../../src/engine/survey/surveyOf.ts';
import { wellKnown } from '../../../src/engine/survey/wellKnown.ts';
import { gridSite } from './gridSite.ts';

describe('marks that are well known', () => {
  it('[V13] are told with the covariances that each has by itself, and no other is told', () => {
    let [told, untold] = [0, 0];
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 40 }),
        fc.double({ min: 1.7, max: 3, noNaN: true }),
        fc.constantFrom(0.05, 0.2, 12),
        (marks, each, within) => {
          const { site } = surveyed(gridSite({ marks, tapes: Math.round(marks * each) }), null);
          const datum = heldOf(site, newCarry())?.datum ?? null;
          fc.pre(datum !== null);
          const known = wellKnown(datum, within);
          for (const mark of datum.by) {
            const plain = covarianceOf(datum, [{ mark, share: 1 }]);
            const [large] = spreads(plain);
            const found = known.get(mark);
            if (found === undefined) untold += 1;
            else {
              told += 1;
              expect(Math.sqrt(large)).toBeLessThan(within);
              for (const axis of ['xx', 'xy', 'yy'] as const)
                expect(Math.abs(found[axis] - plain[axis])).toBeLessThan(1e-6 * within ** 2);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
    expect(told).toBeGreaterThan(300);
    expect(untold).toBeGreaterThan(300);
  });
});
