/** What a stick can be filled with: lengths in whole steps, kerf already in both them and the room. */
export interface Fill {
  readonly lengths: readonly number[];
  /** What one piece of each length is worth; none is taken that is worth nothing. */
  readonly worth: readonly number[];
  /** How many there are of each. */
  readonly most: readonly number[];
  readonly room: number;
}

export interface Filled {
  readonly worth: number;
  readonly counts: readonly number[];
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/** A number of pieces of one length that is taken as one. */
interface Lot {
  readonly piece: number;
  readonly count: number;
  readonly size: number;
  readonly worth: number;
}

/** Lots of 1, 2, 4, … and the rest: every number up to `most` is a sum of some of them. */
const lotsOf = ({ lengths, worth, most, room }: Fill, unit: number): Lot[] =>
  lengths.flatMap((length, piece) => {
    const each = worth[piece] ?? 0;
    const fits = Math.min(most[piece] ?? 0, Math.floor(room / length));
    if (each <= 0 || fits <= 0) return [];
    const lots: Lot[] = [];
    for (let [left, count] = [fits, 1]; left > 0; left -= count, count *= 2) {
      count = Math.min(count, left);
      lots.push({ piece, count, size: (count * length) / unit, worth: count * each });
    }
    return lots;
  });

/**
 * The fill of a stick that is worth most, by dynamic programming over the room in the largest unit that all
 * lengths are whole numbers of: exact.
 */
export const bestFill = (fill: Fill): Filled => {
  const unit = Math.max(1, fill.lengths.reduce(common, 0));
  const room = Math.floor(fill.room / unit);
  const lots = lotsOf(fill, unit);
  const counts = fill.lengths.map(() => 0);
  if (room <= 0 || lots.length === 0) return { worth: 0, counts };
  const best = new Float64Array(room + 1);
  const taken = lots.map(() => new Uint8Array(room + 1));
  lots.forEach(({ size, worth }, n) => {
    const own = taken[n];
    if (own === undefined) return;
    for (let used = room; used >= size; used -= 1) {
      const gains = (best[used - size] ?? 0) + worth;
      if (gains <= (best[used] ?? 0)) continue;
      best[used] = gains;
      own[used] = 1;
    }
  });
  let used = room;
  for (let n = lots.length - 1; n >= 0; n -= 1) {
    const lot = lots[n];
    if (lot === undefined || taken[n]?.[used] !== 1) continue;
    counts[lot.piece] = (counts[lot.piece] ?? 0) + lot.count;
    used -= lot.size;
  }
  return { worth: best[room] ?? 0, counts };
};
