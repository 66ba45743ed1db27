import { loadsOf, type Loads, type Lot } from './loadsOf.ts';
import { takenOver } from './takenOver.ts';

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

/** The best load that uses no more than so much. */
const loadIn = ({ used, end }: Loads, room: number): number => {
  let n = end - 1;
  while (used[n]! > room) n -= 1;
  return n;
};

/**
 * The fill of a stick that is worth most, by dynamic programming: exact. Lots are added up to loads while these
 * are few, and then taken or not over the room in the largest unit that all lengths are whole numbers of.
 */
export const bestFill = (fill: Fill): Filled => {
  const unit = Math.max(1, fill.lengths.reduce(common, 0));
  const room = Math.floor(fill.room / unit);
  const lots = lotsOf(fill, unit);
  const counts = fill.lengths.map(() => 0);
  if (room <= 0 || lots.length === 0) return { worth: 0, counts };
  const { loads, taken: early } = loadsOf(lots, room);
  const whole = { taken: [], worth: loads.worth[loads.end - 1]!, left: room };
  const late = early === lots.length ? whole : takenOver(lots.slice(early), loads, room);
  for (const { piece, count } of late.taken) counts[piece]! += count;
  const load = loadIn(loads, late.left);
  for (let n = 0; n < early; n += 1) {
    if ((loads.lots[load]! & (1 << n)) !== 0) counts[lots[n]!.piece]! += lots[n]!.count;
  }
  return { worth: late.worth, counts };
};
