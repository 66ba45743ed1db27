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

const lowest = (open: readonly Set<number>[], done: Uint8Array): number => {
  let least = -1;
  for (let n = 0; n < open.length; n += 1) {
    if (done[n] === 1) continue;
    if (least === -1 || open[n]!.size < open[least]!.size) least = n;
  }
  return least;
};

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
  const open: Set<number>[] = Array.from({ length: size }, () => new Set());
  for (const group of groups) {
    for (const a of group) for (const b of group) if (a !== b) open[a]?.add(b);
  }
  const done = new Uint8Array(size);
  const places = new Int32Array(size);
  const filled: (readonly number[])[] = [];
  for (let place = 0; place < size; place += 1) {
    const next = lowest(open, done);
    const around = [...(open[next] ?? [])];
    done[next] = 1;
    places[next] = place;
    filled.push(around);
    // what stood with it stands together once it is gone
    for (const a of around) {
      open[a]?.delete(next);
      for (const b of around) if (a !== b) open[a]?.add(b);
    }
  }
  const later = filled.map((around) => Int32Array.from(around, (n) => places[n]!).sort());
  return { places, later };
};
