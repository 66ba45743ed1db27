/**
 * In which order unknowns are eliminated, and what that fills: unknowns are told by their place in
 * the order from here on.
 */
export interface EliminationOrder {
  /** For each unknown as it was given, its place in the order. */
  readonly places: Int32Array;
  /** For each place the later ones that its row of the triangle may fill, rising. */
  readonly later: readonly Int32Array[];
}

/** Which of the numbers is least, the first of those that are; of none, the first. */
const leastOf = (degrees: Int32Array): number => {
  let least = 0;
  for (let n = 1; n < degrees.length; n += 1) if (degrees[n]! < degrees[least]!) least = n;
  return least;
};

/** What is in one of two rising lists or in both, but for two of it; rising. */
const joined = (a: readonly number[], b: readonly number[], but: readonly [number, number]) => {
  const all: number[] = [];
  let [n, m] = [0, 0];
  while (n < a.length || m < b.length) {
    const next = m === b.length || (n < a.length && a[n]! <= b[m]!) ? a[n]! : b[m]!;
    if (a[n] === next) n += 1;
    if (b[m] === next) m += 1;
    if (next !== but[0] && next !== but[1]) all.push(next);
  }
  return all;
};

/** For each unknown the others that it stands with in a group, rising. */
const neighbours = (
  size: number,
  groups: readonly (readonly number[])[],
): (readonly number[])[] => {
  const open: Set<number>[] = Array.from({ length: size }, () => new Set());
  for (const group of groups) {
    for (const a of group) for (const b of group) if (a !== b) open[a]?.add(b);
  }
  return open.map((around) => [...around].sort((a, b) => a - b));
};

/** More than anything stands with: what is gone. */
const gone = 2 ** 31 - 1;

/**
 * An order for the unknowns of a least-squares problem that keeps its triangle sparse: always the one
 * next that stands with the fewest others in the rows that are left, the first of those that stand
 * with as many. `groups` names the unknowns of each row, counted from 0. Minimum degree, from memory:
 * A. George and J. Liu, Computer Solution of Large Sparse Positive Definite Systems (1981).
 */
export const eliminationOrder = (
  size: number,
  groups: readonly (readonly number[])[],
): EliminationOrder => {
  const open = neighbours(size, groups);
  const degrees = Int32Array.from(open, ({ length }) => length);
  const places = new Int32Array(size);
  const filled: (readonly number[])[] = [];
  for (let place = 0; place < size; place += 1) {
    const next = leastOf(degrees);
    const around = open[next]!;
    degrees[next] = gone;
    places[next] = place;
    filled.push(around);
    // what stood with it stands together once it is gone
    for (const a of around) {
      open[a] = joined(open[a]!, around, [a, next]);
      degrees[a] = open[a].length;
    }
  }
  const later = filled.map((around) => Int32Array.from(around, (n) => places[n]!).sort());
  return { places, later };
};
