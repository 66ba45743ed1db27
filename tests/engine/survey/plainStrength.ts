import { Matrix, SingularValueDecomposition } from 'ml-matrix';

/** What rows over their sigmas say of the unknowns, by the singular values of a library. */
export interface PlainStrength {
  /** Rising or falling, as the library has them. */
  readonly singular: readonly number[];
  /** For each row one less the square of its part in what is known: its redundancy number. */
  readonly redundancies: readonly number[];
  /** How many unknowns or combinations of them nothing tells of. */
  readonly freedoms: number;
  /** One standard deviation of a combination of the unknowns; null where it is not known at all. */
  readonly sigmaOf: (combination: Float64Array) => number | null;
  /** The directions of the unknowns that nothing tells of. */
  readonly free: readonly (readonly number[])[];
}

/** A combination of which more than this share is free is not known. */
const share = 1e-6;

/** What is known no better than `loose` inches (one over the singular value) counts as free. */
export const plainStrength = (
  rows: readonly Float64Array[],
  size: number,
  loose: number,
): PlainStrength => {
  // never fewer rows than unknowns, so that the library finds a direction for each
  const none = Array.from(
    { length: Math.max(0, size - rows.length) },
    () => new Float64Array(size),
  );
  const found = new SingularValueDecomposition(new Matrix([...rows, ...none]));
  const { diagonal, leftSingularVectors: u, rightSingularVectors: v } = found;
  const known = diagonal.map((value) => value * loose > 1);
  const free = diagonal.flatMap((_, k) => (known[k] ? [] : [v.getColumn(k)]));
  const times = (a: ArrayLike<number>, k: number): number => {
    let sum = 0;
    for (let n = 0; n < size; n += 1) sum += a[n]! * v.get(n, k);
    return sum;
  };
  return {
    singular: diagonal,
    freedoms: free.length,
    free,
    redundancies: rows.map((_, row) =>
      diagonal.reduce((left, _value, k) => (known[k] ? left - u.get(row, k) ** 2 : left), 1),
    ),
    sigmaOf: (combination) => {
      const length = Math.hypot(...combination);
      let square = 0;
      for (let k = 0; k < size; k += 1) {
        const part = times(combination, k);
        if (known[k]) square += (part / diagonal[k]!) ** 2;
        else if (Math.abs(part) > share * length) return null;
      }
      return Math.sqrt(square);
    },
  };
};
