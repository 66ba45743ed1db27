import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  rangeEnds,
  ranges,
  rangeSteps,
  rangeTable,
} from '../../../src/drawing/tables/rangeTable.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import type { Term } from '../../../src/engine/opening.ts';
import { term } from '../../engine/gate/term.ts';

const anyTerm = fc
  .tuple(
    fc.constantFrom('leaf', 'hinge', 'latch', 'overlap'),
    fc.double({ min: 0.5, max: 90, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.constantFrom('uncertain', 'adjustable', 'catch'),
  )
  .map(([role, low, spread, how]): Term => ({
    ...term(role, low, low + spread / 2, low + spread),
    spread: how,
  }));

describe('the working of a range', () => {
  it('[D48] adds up to the ends that the opening has', () => {
    fc.assert(
      fc.property(fc.array(anyTerm, { maxLength: 8 }), (terms) => {
        const opening = openingOf(terms);
        for (const range of ranges) {
          const steps = rangeSteps(opening, range);
          const [from, to] = rangeEnds(opening, range);
          expect(steps.reduce((so, step) => so + step.from, 0)).toBeCloseTo(from, 6);
          expect(steps.reduce((so, step) => so + step.to, 0)).toBeCloseTo(to, 6);
        }
      }),
    );
  });

  it('[D48] takes unsure parts at their largest for the lower end of what is sure', () => {
    const opening = openingOf([
      term('leaf', 44),
      term('hinge', 1.75, 2, 2),
      term('latch', 1.5, 2, 2.5),
    ]);
    expect(rangeTable(opening, 'sure', { system: 'inches', fraction: 8 }).rows).toEqual([
      ['leaf', '44"', '44"'],
      ['hinge', '2"', '1 3/4"'],
      ['latch', '1 1/2"', '2 1/2"'],
      ['Added up', '47 1/2"', '48 1/4"'],
    ]);
  });
});
