import type { Equation } from './turned.ts';
import { leastSquares, whitened, type UpperTriangle } from './upperTriangle.ts';

/**
 * The unknowns that mend what equations are off by, as far as least squares can, with what is free at 0: by the
 * triangle of these equations, or as a step towards it by that of others near to them. The semi-normal
 * equations RᵀR x = -Aᵀ off.
 */
export const mended = (triangle: UpperTriangle, equations: readonly Equation[]): Float64Array => {
  const down = new Float64Array(triangle.free.length);
  for (const { columns, values, off } of equations) {
    for (let n = 0; n < columns.length; n += 1) down[columns[n]!]! -= values[n]! * off;
  }
  return leastSquares(triangle, whitened(triangle, down));
};
