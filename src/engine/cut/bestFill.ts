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

/** Whether a lot is taken, by the room: its bit in the numbers that 32 lots share. */
interface Taken {
  readonly rooms: Uint32Array;
  readonly bit: number;
}

/** Of so many lots, and up to a room. */
const noneTaken = (lots: number, room: number): Taken[] => {
  const shared = Array.from({ length: Math.ceil(lots / 32) }, () => new Uint32Array(room + 1));
  return Array.from({ length: lots }, (_, n) => ({
    rooms: shared[n >>> 5] ?? new Uint32Array(room + 1),
    bit: 1 << (n & 31),
  }));
};

/** Whether a lot is taken, by the room, as it is best with those before it; no less room than `least` is asked for. */
const takeLot = (
  best: Float64Array,
  { rooms, bit }: Taken,
  { size, worth }: Lot,
  least: number,
): void => {
  const first = Math.max(size, least);
  for (let used = best.length - 1; used >= first; used -= 1) {
    const gains = best[used - size]! + worth;
    if (gains > best[used]!) {
      best[used] = gains;
      rooms[used]! |= bit;
    }
  }
};

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
  const taken = noneTaken(lots.length, room);
  // those after a lot can leave no less room than this, and the last is asked for the whole alone
  let least = room - lots.reduce((sum, { size }) => sum + size, 0);
  lots.forEach((lot, n) => {
    least += lot.size;
    const own = taken[n];
    if (own !== undefined) takeLot(best, own, lot, least);
  });
  let used = room;
  for (let n = lots.length - 1; n >= 0; n -= 1) {
    const lot = lots[n];
    const own = taken[n];
    if (lot === undefined || own === undefined || (own.rooms[used]! & own.bit) === 0) continue;
    counts[lot.piece] = (counts[lot.piece] ?? 0) + lot.count;
    used -= lot.size;
  }
  return { worth: best[room] ?? 0, counts };
};
