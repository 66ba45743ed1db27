import { describe, expect, it } from 'vitest';
import { gapAt } from '../../../src/engine/gate/gapAt.ts';
import { leavesFor } from '../../../src/engine/gate/leavesFor.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import type { Term } from '../../../src/engine/opening.ts';
import { inches } from '../../../src/units/inches.ts';

const term = (role: Term['role'], low: number, planned = low, high = planned): Term => ({
  role,
  label: role,
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
  source: 'measured',
});

const single = (leaf: number, hinge: number, latch: number) =>
  openingOf([term('hinge', hinge), term('leaf', leaf), term('latch', latch)]);

const double = (leaf: number, hinge: number, gap: number) =>
  openingOf([
    term('hinge', hinge),
    term('leaf', leaf),
    term('latch', gap),
    term('leaf', leaf),
    term('hinge', hinge),
  ]);

describe('openingOf', () => {
  // sums worked from the allowances of trade pages: common practice, no published source
  it.each([
    [32.25, 1.75, 2, 36],
    [44.25, 1.75, 2, 48],
    [44, 1.875, 2.125, 48],
  ])('[O1] a leaf of %d, hinge %d and latch %d make %d', (leaf, hinge, latch, opening) => {
    expect(single(leaf, hinge, latch).target).toBe(opening);
  });

  it.each([
    [56.875, 1.875, 2.5, 120],
    [68.625, 1.875, 3, 144],
  ])('[O1] two leaves of %d, hinges %d and gap %d make %d', (leaf, hinge, gap, opening) => {
    expect(double(leaf, hinge, gap).target).toBe(opening);
  });

  it('[O2] holds from the largest parts and smallest gap to the smallest parts and largest gap', () => {
    const opening = openingOf([
      term('hinge', 1.75, 2, 2),
      term('leaf', 44),
      term('latch', 1.5, 2, 2.5),
    ]);
    expect(opening.holdsFrom).toBe(2 + 44 + 1.5);
    expect(opening.holdsTo).toBe(1.75 + 44 + 2.5);
  });
});

describe('gapAt', () => {
  const opening = openingOf([
    term('hinge', 1.75, 2, 2),
    term('leaf', 44),
    term('latch', 1.5, 2, 2.5),
  ]);

  it.each([
    [48, 2, 'holds', 0],
    [48.5, 2.5, 'may hold', 0],
    [47.4, 1.4, 'may hold', 0],
    [47, 1, 'too narrow', 0.25],
    [49, 3, 'too wide', 0.5],
  ] as const)('[O3] posts set at %d leave %d: %s by %d', (width, planned, verdict, by) => {
    const gap = gapAt(opening, inches(width));
    expect(gap.planned).toBeCloseTo(planned, 12);
    expect(gap.verdict).toBe(verdict);
    expect(gap.by).toBe(by);
  });
});

describe('leavesFor', () => {
  // 10 ft and 12 ft double gates turned round: common practice, no published source
  it.each([
    [120, 6.25, 56.875],
    [144, 6.75, 68.625],
  ])('[O4] an opening of %d less %d takes two leaves of %d', (want, taken, leaf) => {
    const order = leavesFor(inches(want), inches(taken), 2, inches(1 / 8));
    expect(order).toEqual({ leaf, opening: want });
  });

  it('[O4] rounds down to the step and works the opening out again', () => {
    const order = leavesFor(inches(48), inches(4.1), 1, inches(0.25));
    expect(order.leaf).toBe(43.75);
    expect(order.opening).toBeCloseTo(47.85, 12);
  });

  it('[O4] says in one line when nothing is left for a leaf', () => {
    expect(() => leavesFor(inches(4), inches(6), 1, inches(0.25))).toThrow(/4 in: expected more/);
  });
});
