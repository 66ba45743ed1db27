/** A number of pieces of one length that is taken as one. */
export interface Lot {
  readonly piece: number;
  readonly count: number;
  readonly size: number;
  readonly worth: number;
}

/**
 * What lots add up to in a stick, those loads first that use less of it; none is there than which one that
 * uses no more is worth more.
 */
export interface Loads {
  readonly used: number[];
  readonly worth: number[];
  /** Which lots each is of: a bit for each. */
  readonly lots: number[];
  /** Those before the first use less than another that has room for all that is to come as well. */
  first: number;
  end: number;
}

const emptyLoad = (): Loads => ({ used: [0], worth: [0], lots: [0], first: 0, end: 1 });

const add = (loads: Loads, used: number, worth: number, lots: number): void => {
  const to = loads.end;
  loads.used[to] = used;
  loads.worth[to] = worth;
  loads.lots[to] = lots;
  loads.end = to + 1;
};

/** A lot with the bit that is its own. */
interface Told {
  readonly lot: Lot;
  readonly bit: number;
}

/** Loads with and without one more lot; of two that are worth the same the one without it counts for more. */
const takeLot = (next: Loads, loads: Loads, { lot, bit }: Told, room: number): void => {
  const { used, worth, lots, end } = loads;
  [next.first, next.end] = [0, 0];
  let [n, without, within] = [loads.first, -1, -1];
  for (let k = loads.first; k < end; k += 1) {
    const uses = used[k]! + lot.size;
    if (uses > room) break;
    const gains = worth[k]! + lot.worth;
    for (; n < end && used[n]! <= uses; n += 1) {
      without = worth[n]!;
      const isLess = used[n] === uses && without < gains;
      if (without >= within && !isLess) add(next, used[n]!, without, lots[n]!);
    }
    if (gains <= without) continue;
    within = gains;
    add(next, uses, gains, lots[k]! | bit);
  }
  for (; n < end; n += 1) if (worth[n]! >= within) add(next, used[n]!, worth[n]!, lots[n]!);
};

/** A load for so many rooms: with more of them another way is faster. Ours. */
const sparse = 8;

/** So many lots have a bit. */
const bits = 32;

/**
 * The loads of the first of some lots up to a room, and how many lots these are: all, but where loads get so many that
 * one may as well ask room by room. Dynamic programming by lists (E. Horowitz and S. Sahni, Computing
 * Partitions with Applications to the Knapsack Problem, 1974; from memory).
 */
export const loadsOf = (lots: readonly Lot[], room: number): { loads: Loads; taken: number } => {
  let [loads, next] = [emptyLoad(), emptyLoad()];
  let left = lots.reduce((sum, { size }) => sum + size, 0);
  let taken = 0;
  for (const lot of lots) {
    if (taken === bits || (loads.end - loads.first) * sparse > room) break;
    takeLot(next, loads, { lot, bit: 1 << taken }, room);
    [loads, next] = [next, loads];
    [left, taken] = [left - lot.size, taken + 1];
    while (loads.first + 1 < loads.end && loads.used[loads.first + 1]! + left <= room) {
      loads.first += 1;
    }
  }
  return { loads, taken };
};
