import type { Combination } from './combination.ts';
import type { TriangleFill } from './triangleFill.ts';

/**
 * The upper triangle R of a least-squares problem with its right side: R has the same least squares as
 * all the rows that were turned into it. Rows of R are sparse: `fill` says what they may fill.
 */
export interface UpperTriangle {
  readonly fill: TriangleFill;
  /** What stands in the rows, at the columns of `fill`: of each its diagonal first. */
  readonly values: Float64Array;
  readonly right: Float64Array;
  /** Columns that depend on those before them: their unknowns are free, and count as 0. */
  readonly free: Uint8Array;
  /** Room to turn a row in; all zero between. */
  readonly work: Float64Array;
}

/** A triangle that nothing was turned into yet. */
export const emptyTriangle = (fill: TriangleFill): UpperTriangle => {
  const size = fill.starts.length - 1;
  return {
    fill,
    values: new Float64Array(fill.columns.length),
    right: new Float64Array(size),
    free: new Uint8Array(size),
    work: new Float64Array(size),
  };
};

/** Values below this count as nothing when rows are turned: their squares are nothing. */
export const vanishing = 1e-150;

/** The column at which a row goes on that has been cleared at one; -1 for none. */
const nextOf = ({ starts, columns }: TriangleFill, column: number): number => {
  const next = starts[column]! + 1;
  return next < starts[column + 1]! ? columns[next]! : -1;
};

/** Turns the row in `work` into the triangle, by the rotation of Givens that clears a column at a time. */
const turnIn = (triangle: UpperTriangle, first: number, right: number): void => {
  const { fill, values, work } = triangle;
  const { starts, columns } = fill;
  let rest = right;
  for (let column = first; column >= 0; column = nextOf(fill, column)) {
    if (Math.abs(work[column]!) < vanishing) continue;
    const [start, end] = [starts[column]!, starts[column + 1]!];
    const [own, value] = [values[start]!, work[column]!];
    const long = Math.sqrt(own * own + value * value);
    const [c, s] = [own / long, value / long];
    for (let n = start; n < end; n += 1) {
      const [a, b] = [values[n]!, work[columns[n]!]!];
      values[n] = c * a + s * b;
      work[columns[n]!] = c * b - s * a;
    }
    work[column] = 0;
    const old = triangle.right[column]!;
    triangle.right[column] = c * old + s * rest;
    rest = c * rest - s * old;
  }
};

/**
 * Finds the columns that depend on those before them, and frees their unknowns; changes the triangle. A
 * diagonal is what is left of its column when all earlier ones are taken out of it: below `least` it
 * counts as nothing.
 */
export const freeDependent = (triangle: UpperTriangle, least: number): void => {
  const { fill, values, right, free, work } = triangle;
  const { starts, columns } = fill;
  for (let column = 0; column < free.length; column += 1) {
    const [start, end] = [starts[column]!, starts[column + 1]!];
    if (Math.abs(values[start]!) >= least) continue;
    free[column] = 1;
    // what the row still says of later columns is said by none of theirs
    for (let n = start + 1; n < end; n += 1) work[columns[n]!] = values[n]!;
    values.fill(0, start, end);
    turnIn(triangle, nextOf(fill, column), right[column]!);
    right[column] = 0;
    work.fill(0);
  }
};

/** The unknowns for a right side, from the last column back; what is free is as it stands in `x`. */
const backwards = (
  { fill: { starts, columns }, values, free }: UpperTriangle,
  right: Float64Array,
  x: Float64Array,
): Float64Array => {
  for (let column = free.length - 1; column >= 0; column -= 1) {
    if (free[column] === 1) continue;
    const start = starts[column]!;
    let sum = right[column]!;
    for (let n = start + 1; n < starts[column + 1]!; n += 1) sum -= values[n]! * x[columns[n]!]!;
    x[column] = sum / values[start]!;
  }
  return x;
};

/** The least-squares solution, with what is free at 0; or R⁻¹ of another right side. */
export const leastSquares = (
  triangle: UpperTriangle,
  right: Float64Array = triangle.right,
): Float64Array => backwards(triangle, right, new Float64Array(triangle.free.length));

/** For every free unknown how the others go with it when nothing of the rows changes: R x = 0. */
export const nullVectors = (triangle: UpperTriangle): Float64Array[] => {
  const size = triangle.free.length;
  const none = new Float64Array(size);
  return Array.from({ length: size }, (_, n) => n)
    .filter((n) => triangle.free[n] === 1)
    .map((n) => backwards(triangle, none, new Float64Array(size).fill(1, n, n + 1)));
};

/**
 * R⁻ᵀ of a combination of the unknowns, which must be one that the rows determine. The product of two
 * such is the covariance of their combinations, where every row was over its standard deviation.
 */
export const whitened = (
  { fill: { starts, columns }, values, free }: UpperTriangle,
  combination: Float64Array,
): Float64Array => {
  const y = combination.slice();
  for (let column = 0; column < free.length; column += 1) {
    if (free[column] === 1) y[column] = 0;
    if (y[column] === 0) continue;
    const start = starts[column]!;
    const share = y[column]! / values[start]!;
    y[column] = share;
    for (let n = start + 1; n < starts[column + 1]!; n += 1) y[columns[n]!]! -= values[n]! * share;
  }
  return y;
};

/**
 * The product of R⁻ᵀ of a combination of few unknowns with itself, its variance: as `whitened` has it, but along
 * the columns alone that it can reach. They must stand together in the order that the triangle was made for.
 */
export const whitenedSquare = (
  { fill, values, free, work }: UpperTriangle,
  combination: Combination,
): number => {
  const { starts, columns, frontOf } = fill;
  let first = free.length;
  for (let n = 0; n < combination.columns.length; n += 1) {
    const column = combination.columns[n]!;
    work[column]! += combination.values[n]!;
    if (column < first) first = column;
  }
  const taken = (column: number): number => {
    const value = free[column] === 1 ? 0 : work[column]! / values[starts[column]!]!;
    work[column] = 0;
    return value;
  };
  let sum = 0;
  for (let column = first < free.length ? first : -1; column >= 0;) {
    // two of a front go together, since they reach the same columns after them
    const isPair = frontOf[column] === frontOf[column + 1];
    const one = taken(column);
    if (isPair) work[column + 1]! -= one * values[starts[column]! + 1]!;
    const other = isPair ? taken(column + 1) : 0;
    sum += one * one + other * other;
    const last = isPair ? column + 1 : column;
    const [start, end] = [starts[last]! + 1, starts[last + 1]!];
    const back = end - starts[column + 1]!;
    for (let n = start; n < end; n += 1) {
      work[columns[n]!]! -= one * values[n - back]! + other * values[n]!;
    }
    column = start < end ? columns[start]! : -1;
  }
  return sum;
};
