import fc from 'fast-check';
import { Matrix, QrDecomposition } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { eliminationOrder } from '../../src/geometry/eliminationOrder.ts';
import { triangleFill } from '../../src/geometry/triangleFill.ts';
import { turned, type Equation } from '../../src/geometry/turned.ts';
import type { UpperTriangle } from '../../src/geometry/upperTriangle.ts';

interface Pairs {
  readonly places: number;
  readonly pairs: readonly (readonly [number, number])[];
  readonly seed: number;
}

/** Places that hang together here and there, so that there are fronts of all kinds. */
const anyPairs: fc.Arbitrary<Pairs> = fc.integer({ min: 2, max: 20 }).chain((places) =>
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
const problemOf = ({ places, pairs, seed }: Pairs) => {
  const next = valuesFrom(seed);
  const order = eliminationOrder(places, pairs);
  const equations = pairs.map(([a, b]): Equation => {
    const columns = [a, b].flatMap((n) => [2 * order.places[n]!, 2 * order.places[n]! + 1]);
    return { columns, values: columns.map(next), off: next() };
  });
  return { fill: triangleFill(order.later, 2), equations };
};

/** All rows that are held to, each with its right side last. */
const dense = (size: number, equations: readonly Equation[], hold: number): Matrix => {
  const matrix = Matrix.zeros(equations.length + size, size + 1);
  equations.forEach(({ columns, values, off }, row) => {
    columns.forEach((column, n) => matrix.set(row, column, matrix.get(row, column) + values[n]!));
    matrix.set(row, size, -off);
  });
  for (let n = 0; n < size; n += 1) matrix.set(equations.length + n, n, Math.sqrt(hold));
  return matrix;
};

/** A triangle as a matrix, each row with its right side last. */
const written = ({ fill: { starts, columns }, values, right }: UpperTriangle): Matrix => {
  const matrix = Matrix.zeros(right.length, right.length + 1);
  right.forEach((value, row) => {
    for (let n = starts[row]!; n < starts[row + 1]!; n += 1)
      matrix.set(row, columns[n]!, values[n]!);
    matrix.set(row, right.length, value);
  });
  return matrix;
};

describe('equations turned into a triangle front by front', () => {
  it('[G32] the triangle is that of a library, row by row but for its sign', () => {
    fc.assert(
      fc.property(anyPairs, fc.constantFrom(1e-4, 1), (some, hold) => {
        const { fill, equations } = problemOf(some);
        const size = 2 * some.places;
        const ours = written(turned(fill, equations, hold));
        const theirs = new QrDecomposition(dense(size, equations, hold)).upperTriangularMatrix;
        for (let row = 0; row < size; row += 1) {
          const sign = Math.sign(ours.get(row, row) * theirs.get(row, row));
          for (let n = row; n <= size; n += 1)
            expect(ours.get(row, n)).toBeCloseTo(sign * theirs.get(row, n), 8);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('[G34] keeps the squares of its rows where nothing holds them, and fills no more than it tells', () => {
    fc.assert(
      fc.property(anyPairs, (some) => {
        const { fill, equations } = problemOf(some);
        const known = [...fill.starts.subarray(1).keys()];
        const rows = dense(known.length, equations, 0).subMatrixColumn(known);
        const own = written(turned(fill, equations)).subMatrixColumn(known);
        const [theirs, ours] = [rows, own].map((one) => one.transpose().mmul(one).to1DArray());
        ours!.forEach((one, n) => expect(one).toBeCloseTo(theirs![n]!, 10));
      }),
      { numRuns: 200 },
    );
  });
});
