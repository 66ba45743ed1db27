import type { Inches } from '../../units/inches.ts';
import type { TicketPiece, TicketStick } from './cutTicket.ts';
import { leftIn } from './ticketOf.ts';

/** A stick that is being cut; `left` inches of it can still be cut. */
export interface OpenStick {
  readonly from: TicketStick['from'];
  readonly stick: Inches;
  readonly pieces: TicketPiece[];
  left: number;
}

/** Sticks that are being cut, by what is left of them. */
export interface OpenSticks {
  /** All of them, in the order in which they were opened. */
  readonly all: readonly OpenStick[];
  /**
   * The stick that most of a rail can be taken from that `need` inches are missing of, no piece shorter than
   * `least`; of several that of which least is left, and of these the one that was opened first. Null where
   * there is none.
   */
  readonly best: (need: number, least: number) => OpenStick | null;
  readonly open: (stick: OpenStick) => void;
  /** Cuts a piece from one of them. */
  readonly cut: (stick: OpenStick, piece: TicketPiece) => void;
}

/** How much of a rail can be taken from what is left of a stick; 0 where the piece or the rest is too short. */
export const taken = (left: number, need: number, least: number): number => {
  if (left >= need) return need;
  const some = need - left < least ? need - least : left;
  return some >= least ? some : 0;
};

/** An open stick and how many were opened before it. */
interface Entry {
  readonly stick: OpenStick;
  readonly turn: number;
}

/** Sticks that are open already, and those to come; `kerf` inches are lost at each cut. */
export const openSticks = (first: readonly OpenStick[], kerf: Inches): OpenSticks => {
  const all = [...first];
  const turns = new Map(all.map((stick, turn) => [stick, turn]));
  const sorted = all
    .map((stick, turn): Entry => ({ stick, turn }))
    .toSorted((a, b) => a.stick.left - b.stick.left || a.turn - b.turn);
  /** The first place of the sorted sticks from which on something holds, which holds for all behind it. */
  const from = (holds: (entry: Entry) => boolean): number => {
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      const entry = sorted[middle];
      if (entry !== undefined && holds(entry)) high = middle;
      else low = middle + 1;
    }
    return low;
  };
  const placeOf = (left: number, turn: number): number =>
    from(({ stick, turn: own }) => stick.left > left || (stick.left === left && own >= turn));
  const put = (stick: OpenStick, turn: number): void => {
    sorted.splice(placeOf(stick.left, turn), 0, { stick, turn });
  };
  const best = (need: number, least: number): OpenStick | null => {
    const whole = sorted[from(({ stick }) => stick.left >= need)];
    if (whole !== undefined) return whole.stick;
    // of short ones all that is left is taken; of longer ones less, so that the rest of the rail is no shorter
    const longer = from(({ stick }) => need - stick.left < least);
    const short = sorted[longer - 1]?.stick.left;
    const [a, b] = [sorted[short === undefined ? longer : placeOf(short, 0)], sorted[longer]];
    const some = (one: Entry | undefined): number =>
      one === undefined ? 0 : taken(one.stick.left, need, least);
    const chosen = some(a) >= some(b) ? a : b;
    return chosen === undefined || some(chosen) === 0 ? null : chosen.stick;
  };
  return {
    all,
    best,
    open: (stick) => {
      turns.set(stick, all.length);
      put(stick, all.length);
      all.push(stick);
    },
    cut: (stick, piece) => {
      const turn = turns.get(stick) ?? 0;
      sorted.splice(placeOf(stick.left, turn), 1);
      stick.pieces.push(piece);
      stick.left = leftIn(stick.stick, stick.pieces, kerf);
      put(stick, turn);
    },
  };
};
