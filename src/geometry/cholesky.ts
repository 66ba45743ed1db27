/** A symmetric positive definite matrix as L Lᵀ: the lower triangle by rows in a full square. */
export interface Cholesky {
  readonly size: number;
  readonly lower: Float64Array;
}

/**
 * Factors a symmetric positive definite matrix, given by rows; only its lower triangle is read. Null
 * where it is not positive definite to the last bits. Cholesky's method, as any text on least squares
 * has it.
 */
export const cholesky = (matrix: Float64Array, size: number): Cholesky | null => {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row * size + column] ?? 0;
      for (let n = 0; n < column; n += 1) {
        sum -= lower[row * size + n]! * lower[column * size + n]!;
      }
      if (row !== column) {
        lower[row * size + column] = sum / lower[column * size + column]!;
        continue;
      }
      if (!(sum > 0)) return null;
      lower[row * size + row] = Math.sqrt(sum);
    }
  }
  return { size, lower };
};

/** The solution of A x = b for the matrix that was factored. */
export const solved = ({ size, lower }: Cholesky, right: Float64Array): Float64Array => {
  const x = Float64Array.from(right);
  for (let row = 0; row < size; row += 1) {
    for (let n = 0; n < row; n += 1) x[row]! -= lower[row * size + n]! * x[n]!;
    x[row]! /= lower[row * size + row]!;
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let n = row + 1; n < size; n += 1) x[row]! -= lower[n * size + row]! * x[n]!;
    x[row]! /= lower[row * size + row]!;
  }
  return x;
};

/** The inverse of the matrix that was factored, by rows. */
export const inverse = (factor: Cholesky): Float64Array => {
  const { size } = factor;
  const all = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) {
    const unit = new Float64Array(size);
    unit[column] = 1;
    const x = solved(factor, unit);
    for (let row = 0; row < size; row += 1) all[row * size + column] = x[row]!;
  }
  return all;
};
