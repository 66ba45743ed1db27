import type { Loads, Lot } from './loadsOf.ts';

/** Lots that are taken on top of a load, what is worth all of it, and the room that is left to the load. */
export interface Late {
  readonly taken: readonly Lot[];
  readonly worth: number;
  readonly left: number;
}

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

/** What the best load that uses no more is worth, room by room; from where the first one is. */
const bestOf = ({ used, worth, first, end }: Loads, room: number): Float64Array => {
  const best = new Float64Array(room + 1);
  for (let n = first; n < end; n += 1) {
    best.fill(worth[n]!, used[n], n + 1 < end ? used[n + 1] : room + 1);
  }
  return best;
};

/** Which of some lots are best taken on top of loads in a room: by dynamic programming, room by room. */
export const takenOver = (lots: readonly Lot[], loads: Loads, room: number): Late => {
  const best = bestOf(loads, room);
  const bits = noneTaken(lots.length, room);
  // those after a lot can leave no less room than this, and the last is asked for the whole alone
  let least = room - lots.reduce((sum, { size }) => sum + size, 0);
  lots.forEach((lot, n) => {
    least += lot.size;
    takeLot(best, bits[n]!, lot, least);
  });
  const taken: Lot[] = [];
  let left = room;
  for (let n = lots.length - 1; n >= 0; n -= 1) {
    const { rooms, bit } = bits[n]!;
    if ((rooms[left]! & bit) === 0) continue;
    taken.push(lots[n]!);
    left -= lots[n]!.size;
  }
  return { taken, worth: best[room]!, left };
};
