import fc from 'fast-check';
import { Matrix, SingularValueDecomposition, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { eliminationOrder } from '../../src/geometry/eliminationOrder.ts';
import { triangleFill } from '../../src/geometry/triangleFill.ts';
import { turned } from '../../src/geometry/turned.ts';
import {
  freeDependent,
  leastSquares,
  nullVectors,
  whitened,
  whitenedSquare,
} from '../../src/geometry/upperTriangle.ts';

interface Row {
  readonly columns: readonly number[];
  readonly values: readonly number[];
  readonly right: number;
}

interface Problem {
  readonly size: number;
  readonly rows: readonly Row[];
}

const value = fc.integer({ min: -64, max: 64 }).map((n) => n / 16);

/** Sparse rows over 3 to 9 unknowns, each of up to four of them; no row of nothing. */
const anyProblem = (leastRows: number): fc.Arbitrary<Problem> =>
  fc.integer({ min: 3, max: 9 }).chain((size) =>
    fc.record({
      size: fc.constant(size),
      rows: fc.array(
        fc.uniqueArray(fc.nat(size - 1), { minLength: 1, maxLength: 4 }).chain((columns) =>
          fc.record({
            columns: fc.constant(columns),
            values: fc.array(value, { minLength: columns.length, maxLength: columns.length }),
            right: value,
          }),
        ),
        { minLength: leastRows, maxLength: 24 },
      ),
    }),
  );

const dense = ({ size, rows }: Problem): Matrix =>
  new Matrix(
    rows.map(({ columns, values }) => {
      const row = Array.from({ length: size }, () => 0);
      columns.forEach((column, n) => (row[column] = values[n]!));
      return row;
    }),
  );

/** The triangle of a problem, and how to put what is by its columns back in the order of the unknowns. */
const turnedFrom = ({ size, rows }: Problem) => {
  const { places, later } = eliminationOrder(
    size,
    rows.map(({ columns }) => columns),
  );
  const equations = rows.map(({ columns, values, right }) => {
    return { columns: columns.map((column) => places[column]!), values, off: -right };
  });
  const triangle = turned(triangleFill(later), equations);
  const back = (x: Float64Array): number[] => [...places].map((place) => x[place]!);
  const there = (x: readonly number[]): Float64Array => {
    const y = new Float64Array(size);
    x.forEach((one, n) => (y[places[n]!] = one));
    return y;
  };
  return { triangle, back, there };
};

const unitOf = (size: number, at: number): number[] =>
  Array.from({ length: size }, (_, n) => (n === at ? 1 : 0));

const singular = (matrix: Matrix): number[] =>
  new SingularValueDecomposition(matrix, { autoTranspose: true }).diagonal;

const rankOf = (matrix: Matrix): number => singular(matrix).filter((one) => one > 1e-9).length;

describe('a least-squares problem turned into a triangle', () => {
  it('[G32] has the least squares that a library finds from all its rows', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyProblem(12), (problem) => {
        const matrix = dense(problem);
        fc.pre(Math.min(...singular(matrix)) > 1e-3 && rankOf(matrix) === problem.size);
        const { triangle, back } = turnedFrom(problem);
        const right = Matrix.columnVector(problem.rows.map((row) => row.right));
        const theirs = solve(matrix, right, true).to1DArray();
        back(leastSquares(triangle)).forEach((one, n) => expect(one).toBeCloseTo(theirs[n]!, 7));
        seen += 1;
      }),
      { numRuns: 1500 },
    );
    expect(seen).toBeGreaterThan(500);
  });

  it('[G32] whitens combinations so that their products are covariances', () => {
    fc.assert(
      fc.property(anyProblem(12), fc.nat(8), fc.nat(8), (problem, a, b) => {
        const matrix = dense(problem);
        fc.pre(Math.min(...singular(matrix)) > 1e-2 && rankOf(matrix) === problem.size);
        const { triangle, there } = turnedFrom(problem);
        const [i, j] = [a % problem.size, b % problem.size];
        const unit = (n: number) =>
          whitened(
            triangle,
            there(Array.from({ length: problem.size }, (_, k) => (k === n ? 1 : 0))),
          );
        const [x, y] = [unit(i), unit(j)];
        const product = x.reduce((sum, one, n) => sum + one * y[n]!, 0);
        const inverse = solve(matrix.transpose().mmul(matrix), Matrix.eye(problem.size));
        const theirs = inverse.get(i, j);
        expect(product / (1 + Math.abs(theirs))).toBeCloseTo(theirs / (1 + Math.abs(theirs)), 6);
      }),
    );
  });

  it('[G32] whitens a row by the columns that it reaches as by all of them', () => {
    fc.assert(
      fc.property(anyProblem(1), fc.boolean(), (problem, frees) => {
        const { triangle, there } = turnedFrom(problem);
        freeDependent(triangle, frees ? 1 / 4 : 1e-9);
        for (const { columns, values } of problem.rows) {
          const combination = Array.from({ length: problem.size }, () => 0);
          columns.forEach((column, n) => (combination[column] = values[n]!));
          const all = whitened(triangle, there(combination));
          const own = columns.map((column) => there(unitOf(problem.size, column)).indexOf(1));
          const found = whitenedSquare(triangle, { columns: own, values });
          const square = all.reduce((sum, one) => sum + one * one, 0);
          expect(Math.abs(found - square)).toBeLessThanOrEqual(1e-9 * square);
          expect(triangle.work.every((one) => one === 0)).toBe(true);
        }
      }),
    );
  });

  it('[G33] has as many free unknowns as singular values are zero, and motions that change no row', () => {
    let loose = 0;
    fc.assert(
      fc.property(anyProblem(1), (problem) => {
        const matrix = dense(problem);
        // what is nearly zero is neither
        fc.pre(singular(matrix).every((one) => one < 1e-10 || one > 1e-3));
        const { triangle, back } = turnedFrom(problem);
        freeDependent(triangle, 1e-7);
        const motions = nullVectors(triangle).map(back);
        expect(motions).toHaveLength(problem.size - rankOf(matrix));
        loose += motions.length;
        for (const motion of motions) {
          const changed = matrix.mmul(Matrix.columnVector(motion)).to1DArray();
          const most = Math.max(...motion.map(Math.abs));
          changed.forEach((one) => expect(one / most).toBeCloseTo(0, 6));
        }
        if (motions.length > 0) expect(rankOf(new Matrix(motions))).toBe(motions.length);
      }),
      { numRuns: 1000 },
    );
    expect(loose).toBeGreaterThan(500);
  });

  it('[G33] solves as well as can be where some are free', () => {
    let loose = 0;
    // the library wants no fewer rows than unknowns
    fc.assert(
      fc.property(anyProblem(9), (problem) => {
        const matrix = dense(problem);
        fc.pre(singular(matrix).every((one) => one < 1e-10 || one > 1e-2));
        const { triangle, back } = turnedFrom(problem);
        freeDependent(triangle, 1e-7);
        loose += Number(triangle.free.includes(1));
        const off = (x: readonly number[]): number =>
          matrix
            .mmul(Matrix.columnVector([...x]))
            .to1DArray()
            .reduce((sum, one, n) => sum + (one - problem.rows[n]!.right) ** 2, 0);
        const right = Matrix.columnVector(problem.rows.map((row) => row.right));
        const theirs = solve(matrix, right, true).to1DArray();
        const ours = off(back(leastSquares(triangle)));
        expect(ours).toBeLessThanOrEqual(off(theirs) * (1 + 1e-9) + 1e-9);
      }),
      { numRuns: 3000 },
    );
    expect(loose).toBeGreaterThan(50);
  });

  it('[G32] keeps a chain sparse, whatever order its unknowns have', () => {
    const groups = Array.from({ length: 99 }, (_, n) => [(37 * n) % 100, (37 * (n + 1)) % 100]);
    const { later } = eliminationOrder(100, groups);
    expect(later.reduce((sum, { length }) => sum + length, 0)).toBe(99);
    const star = eliminationOrder(
      100,
      Array.from({ length: 99 }, (_, n) => [0, n + 1]),
    );
    expect(star.later.reduce((sum, { length }) => sum + length, 0)).toBe(99);
  });
});
