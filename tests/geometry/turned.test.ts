import fc from 'fast-check';
import { Matrix, QrDecomposition } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { turned, type Equation } from '../../src/geometry/turned.ts';
import type { UpperTriangle } from '../../src/geometry/upperTriangle.ts';
import { anyPairs, problemOf } from './pairedEquations.ts';

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
