import type { GateId } from '../../site/ids.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { asPut, endLinks, fills, shares, type RunEnd, type Slot } from './links.ts';

/** A gate in its place on a run: centres of its two posts, inches along the run. */
export interface Seat {
  readonly id: GateId;
  readonly start: number;
  readonly end: number;
  readonly startOd: Inches;
  readonly endOd: Inches;
  /** What each post is shared with: the run's end post, the neighbouring gate, or nothing. */
  readonly startWith: 'run' | 'gate' | null;
  readonly endWith: 'run' | 'gate' | null;
}

/** A gate that has no place, and how many inches are missing. */
export interface Misfit {
  readonly id: GateId;
  readonly why: 'wider than its run' | 'past the end' | 'over another gate';
  readonly missing: Inches;
  /** The gate that it would stand over. */
  readonly other: GateId | null;
}

/** The gates of one run, seated from its start to its end, and those that have no place on it. */
export interface Seating {
  readonly seats: readonly Seat[];
  readonly misfits: readonly Misfit[];
}

/** Slots whose posts hang together, and whether the first or the last hangs on a run's end. */
interface Group {
  readonly slots: readonly Slot[];
  readonly first: boolean;
  readonly last: boolean;
}

const byPlace = (a: Slot, b: Slot): number =>
  asPut(a).start + asPut(a).end - asPut(b).start - asPut(b).end || (a.id < b.id ? -1 : 1);

/** Diameters of the posts of a group, one more than its gates; a shared post takes the largest. */
const diameters = ({ slots, first, last }: Group, from: RunEnd, to: RunEnd): number[] => {
  const own = slots.map(({ od }) => od);
  return Array.from({ length: slots.length + 1 }, (_, n) =>
    Math.max(
      own[n - 1] ?? 0,
      own[n] ?? 0,
      n === 0 && first ? from.od : 0,
      n === slots.length && last ? to.od : 0,
    ),
  );
};

/** Centres of a group's posts, counted from the first of them. */
const spread = ({ slots }: Group, ods: readonly number[]): number[] => {
  const nodes = [0];
  slots.forEach((slot, n) => {
    nodes.push((nodes[n] ?? 0) + slot.width + ((ods[n] ?? 0) + (ods[n + 1] ?? 0)) / 2);
  });
  return nodes;
};

/** Where the first post of a group stands that hangs on neither end of the run. */
const freeStart = (slots: readonly Slot[], nodes: readonly number[]): number => {
  const [only, second] = slots;
  if (only === undefined) return 0;
  if (second === undefined) {
    const length = nodes[1] ?? 0;
    if (only.held === 'start') return only.at;
    return only.held === 'end' ? only.at - length : only.at - length / 2;
  }
  // a shared post stands midway between the two that it replaces
  const shared = slots.slice(1).map((slot, n) => {
    const before = slots[n];
    const midway = ((before ? asPut(before).end : 0) + asPut(slot).start) / 2;
    return midway - (nodes[n + 1] ?? 0);
  });
  return shared.reduce((total, shift) => total + shift, 0) / shared.length;
};

const seatGroup = (group: Group, from: RunEnd, to: RunEnd): Seat[] => {
  const ods = diameters(group, from, to);
  const nodes = spread(group, ods);
  const count = group.slots.length;
  const span = nodes[count] ?? 0;
  const base = group.first
    ? from.station
    : group.last
      ? to.station - span
      : freeStart(group.slots, nodes);
  return group.slots.map(({ id }, n) => ({
    id,
    start: base + (nodes[n] ?? 0),
    end: base + (nodes[n + 1] ?? 0),
    startOd: inches(ods[n] ?? 0),
    endOd: inches(ods[n + 1] ?? 0),
    startWith: n > 0 ? 'gate' : group.first ? 'run' : null,
    endWith: n < count - 1 ? 'gate' : group.last ? 'run' : null,
  }));
};

/** Neighbouring slots that share a post, put together; the gaps are those after `seats`. */
const groupsOf = (slots: readonly Slot[], seats: readonly Seat[], ends: Ends): Group[] => {
  const groups: Slot[][] = [];
  slots.forEach((slot, n) => {
    const [before, seat, mine] = [slots[n - 1], seats[n - 1], seats[n]];
    const joined = before && seat && mine && shares(before, slot, mine.start - seat.end);
    const group = groups.at(-1);
    if (joined && group) group.push(slot);
    else groups.push([slot]);
  });
  return groups.map((group, n) => ({
    slots: group,
    first: n === 0 && ends.first,
    last: n === groups.length - 1 && ends.last,
  }));
};

interface Ends {
  readonly first: boolean;
  readonly last: boolean;
}

/** A group that hangs on both ends must fill the run; one that does not lets both ends go. */
const settled = (group: Group, from: RunEnd, to: RunEnd): Group => {
  if (!group.first || !group.last) return group;
  const span = spread(group, diameters(group, from, to)).at(-1) ?? 0;
  const filled = Math.abs(to.station - from.station - span) <= fills;
  return filled ? group : { ...group, first: false, last: false };
};

const seatAll = (slots: readonly Slot[], from: RunEnd, to: RunEnd): Seat[] => {
  const ends = endLinks(slots, from, to);
  const alone = slots.flatMap((slot, n) => {
    const first = n === 0 && ends.first;
    const last = n === slots.length - 1 && ends.last;
    return seatGroup({ slots: [slot], first, last }, from, to);
  });
  return groupsOf(slots, alone, ends).flatMap((group) =>
    seatGroup(settled(group, from, to), from, to),
  );
};

const tooWide = (slot: Slot, from: RunEnd, to: RunEnd): Misfit[] => {
  const ends = (Math.max(slot.od, from.od) + Math.max(slot.od, to.od)) / 2;
  const missing = slot.width + ends - (to.station - from.station);
  if (missing <= fills) return [];
  return [{ id: slot.id, why: 'wider than its run', missing: inches(missing), other: null }];
};

const pastEnd = (seats: readonly Seat[], from: RunEnd, to: RunEnd): Misfit | null => {
  const past = seats
    .map(({ id, start, end }) => ({ id, by: Math.max(from.station - start, end - to.station) }))
    .toSorted((a, b) => b.by - a.by || (a.id < b.id ? 1 : -1))[0];
  if (past === undefined || past.by <= fills) return null;
  return { id: past.id, why: 'past the end', missing: inches(past.by), other: null };
};

/** Of all gates that stand over a neighbour, the one with the latest id. */
const overlap = (seats: readonly Seat[]): Misfit | null => {
  const over = seats.flatMap((seat, n): Misfit[] => {
    const before = seats[n - 1];
    if (before === undefined || seat.startWith === 'gate') return [];
    const missing = before.end + before.endOd / 2 - (seat.start - seat.startOd / 2);
    if (missing <= 0) return [];
    const [id, other] = before.id > seat.id ? [before.id, seat.id] : [seat.id, before.id];
    return [{ id, why: 'over another gate', missing: inches(missing), other }];
  });
  return over.toSorted((a, b) => (a.id < b.id ? 1 : -1))[0] ?? null;
};

/**
 * Seats gates on a run between two end posts. A gate post nearer to an end post, or to a post of
 * the next gate, than their holes allow becomes one post with it, of the larger diameter, and the
 * opening is measured from that post's face. Of two gates over each other the one with the later
 * id has no place. The same run seen from its other end gives the same places.
 */
export const seatGates = (all: readonly Slot[], from: RunEnd, to: RunEnd): Seating => {
  const misfits = all.flatMap((slot) => tooWide(slot, from, to));
  let slots = all.filter(({ id }) => !misfits.some((misfit) => misfit.id === id)).toSorted(byPlace);
  // every round takes one gate off, so this ends
  for (;;) {
    const seats = seatAll(slots, from, to);
    const misfit = overlap(seats) ?? pastEnd(seats, from, to);
    if (misfit === null) return { seats, misfits };
    misfits.push(misfit);
    slots = slots.filter(({ id }) => id !== misfit.id);
  }
};
