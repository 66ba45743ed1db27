import type { GateId } from '../../site/ids.ts';
import { slack } from '../../geometry/tolerance.ts';
import { inches } from '../../units/inches.ts';
import { admitGates, overlapOf, pastEnd, type Misfit } from './admitGates.ts';
import { endLinks, fills, shares, type RunEnd, type Slot } from './links.ts';
import { seatGroup, spanOf, type Group, type Seat } from './seatGroup.ts';

/** The gates of one run, seated from its start to its end, and those that have no place on it. */
export interface Seating {
  readonly seats: readonly Seat[];
  readonly misfits: readonly Misfit[];
}

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
  const filled = Math.abs(to.station - from.station - spanOf(group, from, to)) <= fills + slack;
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

/**
 * Gates that stand over a neighbour once posts are shared: of each two the one with the later id,
 * unless the other goes already.
 */
const overlaps = (seats: readonly Seat[]): Misfit[] => {
  const pairs = seats.flatMap((seat, n) => {
    const before = seats[n - 1];
    if (before === undefined || seat.startWith === 'gate') return [];
    const missing = inches(overlapOf(before, seat));
    if (missing <= slack) return [];
    const [id, other] = before.id > seat.id ? [before.id, seat.id] : [seat.id, before.id];
    return [{ id, why: 'over another gate' as const, missing, other }];
  });
  const gone = new Set<GateId>();
  return pairs
    .toSorted((a, b) => (`${a.other} ${a.id}` < `${b.other} ${b.id}` ? -1 : 1))
    .filter(({ id, other }) => !gone.has(id) && !gone.has(other) && gone.add(id));
};

/** The gate that lies farthest past an end once posts are shared; of two alike the later id. */
const farthestPast = (seats: readonly Seat[], from: RunEnd, to: RunEnd): Misfit[] => {
  const past = seats.flatMap((seat) => pastEnd(seat, from, to) ?? []);
  const most = past.reduce((worst, { missing }) => Math.max(worst, missing), 0);
  return past
    .filter(({ missing }) => missing >= most - slack)
    .toSorted((a, b) => (a.id < b.id ? 1 : -1))
    .slice(0, 1);
};

/**
 * Seats gates on a run between two end posts. A gate post nearer to an end post, or to a post of
 * the next gate, than their holes allow becomes one post with it, of the larger diameter, and the
 * opening is measured from that post's face. Of two gates over each other the one with the later
 * id has no place. The same run seen from its other end gives the same places.
 */
export const seatGates = (all: readonly Slot[], from: RunEnd, to: RunEnd): Seating => {
  const { admitted, misfits } = admitGates(all, from, to);
  const out = [...misfits];
  let slots = admitted.map(({ slot }) => slot);
  // every round takes a gate off, so this ends
  for (;;) {
    const seats = seatAll(slots, from, to);
    const over = overlaps(seats);
    const more = over.length > 0 ? over : farthestPast(seats, from, to);
    if (more.length === 0) return { seats, misfits: out };
    out.push(...more);
    const gone = new Set(more.map(({ id }) => id));
    slots = slots.filter(({ id }) => !gone.has(id));
  }
};
