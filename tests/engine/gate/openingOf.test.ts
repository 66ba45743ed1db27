import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { term } from './term.ts';

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
