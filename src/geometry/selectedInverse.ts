import type { UpperTriangle } from './upperTriangle.ts';

/**
 * The inverse of RᵀR at the places that R may fill, in their order: of each row the square of its own column
 * first. What is free has none. From the last row back, each by those after it: K. Takahashi, J. Fagan and M. Chin,
 * Formation of a Sparse Bus Impedance Matrix (1973), from memory.
 */
export const selectedInverse = ({ fill, values, free }: UpperTriangle): Float64Array => {
  const { starts, columns } = fill;
  const inverse = new Float64Array(columns.length);
  // for each column where it stands in the row at hand, -1 for nowhere
  const at = new Int32Array(free.length).fill(-1);
  for (let column = free.length - 1; column >= 0; column -= 1) {
    if (free[column] === 1) continue;
    const [start, end] = [starts[column]!, starts[column + 1]!];
    for (let n = start + 1; n < end; n += 1) at[columns[n]!] = n;
    for (let n = start + 1; n < end; n += 1) {
      const [later, last] = [starts[columns[n]!]!, starts[columns[n]! + 1]!];
      inverse[n]! -= values[n]! * inverse[later]!;
      for (let m = later + 1; m < last; m += 1) {
        const k = at[columns[m]!]!;
        if (k < 0) continue;
        inverse[k]! -= values[n]! * inverse[m]!;
        inverse[n]! -= values[k]! * inverse[m]!;
      }
    }
    const own = 1 / values[start]!;
    let square = own;
    for (let n = start + 1; n < end; n += 1) {
      at[columns[n]!] = -1;
      inverse[n]! *= own;
      square -= values[n]! * inverse[n]!;
    }
    inverse[start] = square * own;
  }
  return inverse;
};
