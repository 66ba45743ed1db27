import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { leafWidth } from '../../../src/site/leafWidth.ts';
import { orderedLeaves, withLeaves } from '../../../src/screens/openings/orderedLeaves.ts';
import { inches } from '../../../src/units/inches.ts';
import { drive, yard } from '../../drawing/orders/signedYard.ts';
import { term } from '../../engine/gate/term.ts';

const pair = (left: number, right: number) =>
  openingOf([
    term('hinge', 1.75, 2, 2),
    term('leaf', left),
    term('latch', 2, 2, 2.5),
    term('leaf', right),
    term('hinge', 1.75, 2, 2),
  ]);

describe('orderedLeaves', () => {
  it('[O4] turns a set opening round: 119 in takes two leaves of 56 1/2 in', () => {
    // common practice, no published source: (119 - 2 × 2 - 2) / 2 = 56 1/2
    const { leaf, opening } = orderedLeaves(pair(50, 51), inches(119), inches(0.125));
    expect(leaf).toBe(56.5);
    expect(opening.target).toBe(119);
    expect(opening.holdsFrom).toBe(119);
  });

  it('[O4] never orders leaves for which the wanted opening is too narrow', () => {
    const step = fc.constantFrom(0.0625, 0.125, 0.25, 1);
    fc.assert(
      fc.property(fc.double({ min: 20, max: 400, noNaN: true }), step, (want, by) => {
        const { leaf, opening } = orderedLeaves(pair(50, 50), inches(want), inches(by));
        expect(opening.target).toBeLessThan(want + 1e-6);
        expect(opening.target).toBeGreaterThan(want - 2 * by - 1e-6);
        expect(Math.abs(leaf / by - Math.round(leaf / by))).toBeLessThan(1e-9);
      }),
    );
  });

  it('[O4] says so where nothing is left for a leaf', () => {
    expect(() => orderedLeaves(pair(50, 50), inches(6), inches(0.125))).toThrow(
      /expected more than/,
    );
  });

  it('every leaf of the gate becomes one to be made of that width', () => {
    const leaves = Object.values(withLeaves(yard, drive, inches(56)).gates[drive]?.leaves ?? {});
    expect(leaves.map(leafWidth)).toEqual([56, 56]);
    expect(leaves.map(({ from, on }) => [from, on])).toEqual([
      ['catalogue', ''],
      ['catalogue', ''],
    ]);
  });
});
