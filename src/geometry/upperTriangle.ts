/**
 * The upper triangle R of a least-squares problem with its right side: R has the same least squares as
 * all the rows that were turned into it. Rows of R are sparse: `later` says what they may fill.
 */
export interface UpperTriangle {
  readonly later: readonly Int32Array[];
  readonly diagonal: Float64Array;
  /** What stands in each row after the diagonal, at the columns of `later`. */
  readonly rows: readonly Float64Array[];
  readonly right: Float64Array;
  /** Columns that depend on those before them: their unknowns are free, and count as 0. */
  readonly free: Uint8Array;
  /** Room to turn a row in; all zero between. */
  readonly work: Float64Array;
}

/** A triangle that nothing was turned into yet. */
export const emptyTriangle = (later: readonly Int32Array[]): UpperTriangle => ({
  later,
  diagonal: new Float64Array(later.length),
  rows: later.map(({ length }) => new Float64Array(length)),
  right: new Float64Array(later.length),
  free: new Uint8Array(later.length),
  work: new Float64Array(later.length),
});

const keep = (triangle: UpperTriangle, column: number, right: number): void => {
  const { later, diagonal, rows, work } = triangle;
  diagonal[column] = work[column]!;
  work[column] = 0;
  const [columns, row] = [later[column]!, rows[column]!];
  for (let n = 0; n < columns.length; n += 1) {
    row[n] = work[columns[n]!]!;
    work[columns[n]!] = 0;
  }
  triangle.right[column] = right;
};

/** Turns the row in `work` into the triangle, by the rotation of Givens that clears a column at a time. */
const turnIn = (triangle: UpperTriangle, first: number, right: number): void => {
  const { later, diagonal, rows, work } = triangle;
  let rest = right;
  for (let column = first; column >= 0; column = later[column]![0] ?? -1) {
    const value = work[column]!;
    if (value === 0) continue;
    const own = diagonal[column]!;
    if (own === 0) return keep(triangle, column, rest);
    const long = Math.sqrt(own * own + value * value);
    const [c, s] = [own / long, value / long];
    diagonal[column] = long;
    work[column] = 0;
    const [columns, row] = [later[column]!, rows[column]!];
    for (let n = 0; n < columns.length; n += 1) {
      const [a, b] = [row[n]!, work[columns[n]!]!];
      row[n] = c * a + s * b;
      work[columns[n]!] = c * b - s * a;
    }
    const old = triangle.right[column]!;
    triangle.right[column] = c * old + s * rest;
    rest = c * rest - s * old;
  }
};

/**
 * Turns one more row of a least-squares problem into a triangle, which it changes. The columns of a row
 * must stand together in the order that the triangle was made for. As in J. A. George and M. T. Heath,
 * Solution of Sparse Linear Least Squares Problems Using Givens Rotations (1980), from memory.
 */
export const addRow = (
  triangle: UpperTriangle,
  columns: readonly number[],
  values: readonly number[],
  right: number,
): void => {
  let first = triangle.later.length;
  for (let n = 0; n < columns.length; n += 1) {
    const column = columns[n]!;
    triangle.work[column]! += values[n]!;
    if (column < first) first = column;
  }
  if (first < triangle.later.length) turnIn(triangle, first, right);
};

/**
 * Finds the columns that depend on those before them, and frees their unknowns; changes the triangle. A
 * diagonal is what is left of its column when all earlier ones are taken out of it: below `least` it
 * counts as nothing.
 */
export const freeDependent = (triangle: UpperTriangle, least: number): void => {
  const { later, diagonal, rows, right, free, work } = triangle;
  for (let column = 0; column < later.length; column += 1) {
    if (Math.abs(diagonal[column]!) >= least) continue;
    free[column] = 1;
    diagonal[column] = 0;
    const [columns, row] = [later[column]!, rows[column]!];
    // what the row still says of later columns is said by none of theirs
    for (let n = 0; n < columns.length; n += 1) work[columns[n]!] = row[n]!;
    row.fill(0);
    turnIn(triangle, columns[0] ?? -1, right[column]!);
    work.fill(0);
  }
};

/** The unknowns for a right side, from the last column back; what is free is as it stands in `x`. */
const backwards = (triangle: UpperTriangle, right: Float64Array, x: Float64Array): Float64Array => {
  const { later, diagonal, rows, free } = triangle;
  for (let column = later.length - 1; column >= 0; column -= 1) {
    if (free[column] === 1) continue;
    const [columns, row] = [later[column]!, rows[column]!];
    let sum = right[column]!;
    for (let n = 0; n < columns.length; n += 1) sum -= row[n]! * x[columns[n]!]!;
    x[column] = sum / diagonal[column]!;
  }
  return x;
};

/** The least-squares solution, with what is free at 0; or R⁻¹ of another right side. */
export const leastSquares = (
  triangle: UpperTriangle,
  right: Float64Array = triangle.right,
): Float64Array => backwards(triangle, right, new Float64Array(triangle.later.length));

/** For every free unknown how the others go with it when nothing of the rows changes: R x = 0. */
export const nullVectors = (triangle: UpperTriangle): Float64Array[] => {
  const size = triangle.later.length;
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
  { later, diagonal, rows, free }: UpperTriangle,
  combination: Float64Array,
): Float64Array => {
  const y = Float64Array.from(combination);
  for (let column = 0; column < later.length; column += 1) {
    if (free[column] === 1) y[column] = 0;
    const value = y[column]!;
    if (value === 0) continue;
    const share = value / diagonal[column]!;
    y[column] = share;
    const [columns, row] = [later[column]!, rows[column]!];
    for (let n = 0; n < columns.length; n += 1) y[columns[n]!]! -= row[n]! * share;
  }
  return y;
};

/**
 * The product of R⁻ᵀ of a row with itself: as that of `whitened`, to the last bit, but along the columns alone
 * that the row can reach. Its columns must stand together in the order that the triangle was made for.
 */
export const whitenedSquare = (
  { later, diagonal, rows, free, work }: UpperTriangle,
  columns: readonly number[],
  values: readonly number[],
): number => {
  let first = later.length;
  for (let n = 0; n < columns.length; n += 1) {
    const column = columns[n]!;
    work[column]! += values[n]!;
    if (column < first) first = column;
  }
  let sum = 0;
  if (first === later.length) return sum;
  for (let column = first; column >= 0; column = later[column]![0] ?? -1) {
    const value = work[column]!;
    work[column] = 0;
    if (free[column] === 1 || value === 0) continue;
    const share = value / diagonal[column]!;
    sum += share * share;
    const [after, row] = [later[column]!, rows[column]!];
    for (let n = 0; n < after.length; n += 1) work[after[n]!]! -= row[n]! * share;
  }
  return sum;
};
