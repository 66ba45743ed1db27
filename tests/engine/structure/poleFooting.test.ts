import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  constrainedDepth,
  nonconstrainedDepth,
  nonconstrainedTrial,
  type PoleGround,
  type PolePush,
} from '../../../src/engine/structure/poleFooting.ts';
import { isolatedPoles, soils } from '../../../src/trade/soils.ts';
import { inches } from '../../../src/units/inches.ts';

const push = (pounds: number, feet: number): PolePush => ({ pounds, height: inches(12 * feet) });
const ground = (feet: number, lateral: number): PoleGround => ({
  width: inches(12 * feet),
  lateral,
});
const feetOf = (depth: number | null): number => (depth ?? NaN) / 12;

describe('the pole formulas of the building code', () => {
  it('[Z2] held at the ground: the published flagpole, 4.95 ft', () => {
    // Flagpole footing, worked example: scribd.com/document/560795266
    const depth = constrainedDepth(push(30_000, 3), ground(4.5, 350 * isolatedPoles.factor));
    expect(feetOf(depth)).toBeCloseTo(4.952, 3);
  });

  it('[Z3] not held: the term A of two published examples', () => {
    // the same sheet, at a depth of 4.952 ft
    const flagpole = nonconstrainedTrial(
      push(30_000, 3),
      ground(4.5, 350 * isolatedPoles.factor),
      inches(12 * 4.952),
    );
    expect(flagpole.term).toBeCloseTo(13.501, 2);
    // eng-tips.com thread 276653: 3,000 lb, 1 ft wide, 150 psf a foot with a third more, trial depth 6 ft
    const pole = nonconstrainedTrial(push(3000, 8), ground(1, 150 * 1.33), inches(72));
    expect(pole.term).toBeCloseTo(17.594, 2);
    expect(pole.term).toBeCloseTo(17.6, 1);
    // so the trial fails: it asks for 24 ft
    expect(feetOf(pole.asks)).toBeCloseTo(24, 1);
  });

  it('[Z3] a load that goes deeper than anybody digs has no depth, and the trials say how far off', () => {
    const { depth, trials } = nonconstrainedDepth(push(300_000, 30), ground(0.5, 50));
    expect(depth).toBeNull();
    expect(trials.at(-1)!.asks).toBeGreaterThan(trials.at(-1)!.depth);
  });

  it('[Z3] a depth that is there is found, however far off the first trial asks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        fc.double({ min: 4, max: 60, noNaN: true }),
        fc.double({ min: 50, max: 2400, noNaN: true }),
        (pounds, height, width, lateral) => {
          const [of, on] = [
            { pounds, height: inches(height) },
            { width: inches(width), lateral },
          ];
          const least = nonconstrainedTrial(of, on, inches(480)).asks;
          const { depth } = nonconstrainedDepth(of, on);
          if (least > 480) expect(depth).toBeNull();
          else expect(depth).not.toBeNull();
        },
      ),
    );
  });

  it.each([
    // derived by hand from the formula, 130 lb at 3 ft on a 10 in hole
    [150, 3.71],
    [300, 2.81],
    [200, 3.3],
  ])('[Z3] a fence post in %i psf a foot goes %f ft deep', (lateral, feet) => {
    const { depth } = nonconstrainedDepth(push(130, 3), ground(10 / 12, lateral));
    expect(Math.abs(feetOf(depth) - feet)).toBeLessThan(0.02);
  });

  const anyPush = fc.record({
    pounds: fc.double({ min: 1, max: 2000, noNaN: true }),
    height: fc.double({ min: 0, max: 144, noNaN: true }).map(inches),
  });
  const anyGround = fc.record({
    width: fc.double({ min: 6, max: 48, noNaN: true }).map(inches),
    lateral: fc.constantFrom(...soils.map(({ lateral }) => lateral)),
  });
  const more = fc.double({ min: 1, max: 2, noNaN: true });

  it('[Z3] the depth that is found asks for itself', () => {
    fc.assert(
      fc.property(anyPush, anyGround, (of, on) => {
        const { depth } = nonconstrainedDepth(of, on);
        if (depth === null) return;
        // no step of the trials is needed to see it: the formula at the depth gives the depth
        expect(Math.abs(nonconstrainedTrial(of, on, depth).asks - depth)).toBeLessThan(1 / 16);
      }),
    );
  });

  it('[Z4] more push, a higher push, a narrower hole and weaker ground never need less', () => {
    fc.assert(
      fc.property(anyPush, anyGround, more, (of, on, by) => {
        const worse: readonly [PolePush, PoleGround][] = [
          [{ ...of, pounds: of.pounds * by }, on],
          [{ ...of, height: inches(of.height * by) }, on],
          [of, { ...on, width: inches(on.width / by) }],
          [of, { ...on, lateral: on.lateral / by }],
        ];
        const base = nonconstrainedDepth(of, on).depth ?? Infinity;
        for (const [harder, softer] of worse) {
          const found = nonconstrainedDepth(harder, softer).depth ?? Infinity;
          expect(found).toBeGreaterThanOrEqual(base - 1 / 16);
          expect(constrainedDepth(harder, softer)).toBeGreaterThanOrEqual(
            constrainedDepth(of, on) - 1e-9,
          );
        }
      }),
    );
  });

  it('[Z2] below 12 ft the ground bears no more', () => {
    const deep = constrainedDepth(push(400_000, 30), ground(1, 100));
    // d² = 4.25 M / (S b) with S at 12 ft
    expect(feetOf(deep) ** 2).toBeCloseTo((4.25 * 400_000 * 30) / (100 * 12), 3);
    expect(feetOf(deep)).toBeGreaterThan(12);
  });

  it('[Z2] bad figures are refused', () => {
    expect(() => constrainedDepth(push(-1, 3), ground(1, 100))).toThrow(/expected 0 or more/);
    expect(() => nonconstrainedDepth(push(1, 3), ground(0, 100))).toThrow(/expected above 0/);
  });
});
