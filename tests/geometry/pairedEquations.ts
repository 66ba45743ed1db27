import fc from 'fast-check';
import { eliminationOrder } from '../../src/geometry/eliminationOrder.ts';
import { triangleFill } from '../../src/geometry/triangleFill.ts';
import type { Equation } from '../../src/geometry/turned.ts';

/** Places of two unknowns each, and which of them stand together. */
export interface Pairs {
  readonly places: number;
  readonly pairs: readonly (readonly [number, number])[];
  readonly seed: number;
}

/** Places that hang together here and there, so that there are fronts of all kinds. */
export const anyPairs: fc.Arbitrary<Pairs> = fc.integer({ min: 2, max: 20 }).chain((places) =>
  fc.record({
    places: fc.constant(places),
    pairs: fc.array(fc.tuple(fc.nat(places - 1), fc.nat(places - 1)), { maxLength: 4 * places }),
    seed: fc.integer({ min: 1, max: 2 ** 31 - 2 }),
  }),
);

/** Numbers from -1 to 1 that follow from a seed (Lehmer's generator). */
const valuesFrom = (seed: number) => {
  let now = seed;
  return (): number => {
    now = (now * 48271) % 2147483647;
    return (2 * now) / 2147483647 - 1;
  };
};

/** Equations of two unknowns for each place, one for each pair that stands together. */
export const problemOf = ({ places, pairs, seed }: Pairs) => {
  const next = valuesFrom(seed);
  const order = eliminationOrder(places, pairs);
  const equations = pairs.map(([a, b]): Equation => {
    const columns = [a, b].flatMap((n) => [2 * order.places[n]!, 2 * order.places[n]! + 1]);
    return { columns, values: columns.map(next), off: next() };
  });
  return { fill: triangleFill(order.later, 2), equations };
};
