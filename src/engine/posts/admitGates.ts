import type { GateId } from '../../site/ids.ts';
import { slack } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { acrossOf, endLinks, fills, shares, type RunEnd, type Slot } from './links.ts';
import { seatGroup, type Seat } from './seatGroup.ts';

/** A gate that has no place, and how many inches are missing. */
export interface Misfit {
  readonly id: GateId;
  readonly why: 'wider than its run' | 'past the end' | 'over another gate';
  readonly missing: Inches;
  /** The gate that it would stand over. */
  readonly other: GateId | null;
}

/** A gate and where it would sit with no other gate on its run. */
export interface Candidate {
  readonly slot: Slot;
  readonly seat: Seat;
}

const byId = (a: Slot, b: Slot): number => (a.id < b.id ? -1 : 1);

/** How far the faces of two gates' posts stand over each other, inches; negative is apart. */
export const overlapOf = (before: Seat, after: Seat): number =>
  before.end + before.endOd / 2 - (after.start - after.startOd / 2);

const tooWide = (slot: Slot, from: RunEnd, to: RunEnd): Misfit | null => {
  const across = acrossOf(slot, Math.max(slot.od, from.od), Math.max(slot.od, to.od));
  const missing = across - (to.station - from.station);
  if (missing <= fills + slack) return null;
  return { id: slot.id, why: 'wider than its run', missing: inches(missing), other: null };
};

/** How far a post of a gate stands over the post at an end of its run, or past it, if it does. */
export const pastEnd = (seat: Seat, from: RunEnd, to: RunEnd): Misfit | null => {
  const { id, start, end, startOd, endOd, startWith, endWith } = seat;
  // a post that is the run's own end post stands where it should, give or take `fills`
  const before = startWith === 'run' ? -fills : (from.od + startOd) / 2;
  const after = endWith === 'run' ? -fills : (to.od + endOd) / 2;
  const missing = Math.max(from.station + before - start, end + after - to.station);
  if (missing <= slack) return null;
  return { id, why: 'past the end', missing: inches(missing), other: null };
};

/** The place in a list that rises along the run at which a seat goes in. */
const placeOf = (admitted: readonly Candidate[], { start, end }: Seat): number => {
  let [low, high] = [0, admitted.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const other = admitted[middle]?.seat;
    if (other !== undefined && other.start + other.end < start + end) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The misfit of a newcomer between two gates that were there first; null when there is room. */
const crowded = (
  before: Candidate | undefined,
  newcomer: Candidate,
  after: Candidate | undefined,
): Misfit | null => {
  const over = ([a, b, other]: [Candidate, Candidate, Candidate]) => ({
    other: other.slot.id,
    missing: shares(a.slot, b.slot, b.seat.start - a.seat.end) ? 0 : overlapOf(a.seat, b.seat),
  });
  const [worst] = [
    ...(before === undefined ? [] : [over([before, newcomer, before])]),
    ...(after === undefined ? [] : [over([newcomer, after, after])]),
  ].toSorted((a, b) => b.missing - a.missing || (a.other < b.other ? -1 : 1));
  if (worst === undefined || worst.missing <= slack) return null;
  return {
    id: newcomer.slot.id,
    why: 'over another gate',
    missing: inches(worst.missing),
    other: worst.other,
  };
};

/**
 * Lets gates on a run one by one in the order of their ids. One that is wider than the run, lies
 * past its end or over a gate that was there first stays out. Those let on rise along the run.
 */
export const admitGates = (
  slots: readonly Slot[],
  from: RunEnd,
  to: RunEnd,
): { admitted: readonly Candidate[]; misfits: readonly Misfit[] } => {
  const admitted: Candidate[] = [];
  const misfits: Misfit[] = [];
  for (const slot of slots.toSorted(byId)) {
    const wide = tooWide(slot, from, to);
    const [seat] = seatGroup({ slots: [slot], ...endLinks([slot], from, to) }, from, to);
    if (wide !== null || seat === undefined) {
      misfits.push(...(wide === null ? [] : [wide]));
      continue;
    }
    const newcomer = { slot, seat };
    const place = placeOf(admitted, seat);
    const misfit =
      pastEnd(seat, from, to) ?? crowded(admitted[place - 1], newcomer, admitted[place]);
    if (misfit === null) admitted.splice(place, 0, newcomer);
    else misfits.push(misfit);
  }
  return { admitted, misfits };
};
