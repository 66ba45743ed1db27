import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eliminationOrder } from '../../src/geometry/eliminationOrder.ts';

interface Groups {
  readonly size: number;
  readonly groups: readonly (readonly number[])[];
}

const anyGroups: fc.Arbitrary<Groups> = fc.integer({ min: 1, max: 24 }).chain((size) =>
  fc.record({
    size: fc.constant(size),
    groups: fc.array(fc.array(fc.nat(size - 1), { maxLength: 4 }), { maxLength: 40 }),
  }),
);

/** The same by asking at every turn anew who stands with whom, over what is gone. */
const plainly = ({ size, groups }: Groups) => {
  const all = Array.from({ length: size }, (_, n) => n);
  const order: number[] = [];
  const around: number[][] = [];
  const reached = (from: number): number[] => {
    const seen = new Set([from]);
    for (const one of seen) {
      if (one !== from && !order.includes(one)) continue;
      for (const group of groups)
        if (group.includes(one)) group.forEach((other) => seen.add(other));
    }
    return [...seen].filter((one) => one !== from && !order.includes(one));
  };
  while (order.length < size) {
    const left = all.filter((n) => !order.includes(n));
    const fewest = Math.min(...left.map((n) => reached(n).length));
    const next = left.find((n) => reached(n).length === fewest)!;
    around.push(reached(next));
    order.push(next);
  }
  return {
    order,
    later: around.map((some) => some.map((n) => order.indexOf(n)).sort((a, b) => a - b)),
  };
};

describe('an order of elimination', () => {
  it('[G34] is that of the one that fills least next, and tells what that fills', () => {
    fc.assert(
      fc.property(anyGroups, (problem) => {
        const { places, later } = eliminationOrder(problem.size, problem.groups);
        const plain = plainly(problem);
        expect(plain.order.map((n) => places[n])).toEqual(plain.order.map((_, place) => place));
        expect(later.map((some) => [...some])).toEqual(plain.later);
      }),
      { numRuns: 300 },
    );
  });
});
