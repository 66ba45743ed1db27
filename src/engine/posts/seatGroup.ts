import { inches, type Inches } from '../../units/inches.ts';
import type { GateId } from '../../site/ids.ts';
import { acrossOf, asPut, type RunEnd, type Slot } from './links.ts';

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

/** Slots whose posts hang together, and whether the first or the last hangs on a run's end. */
export interface Group {
  readonly slots: readonly Slot[];
  readonly first: boolean;
  readonly last: boolean;
}

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
    nodes.push((nodes[n] ?? 0) + acrossOf(slot, ods[n] ?? 0, ods[n + 1] ?? 0));
  });
  return nodes;
};

/** From the first post of a group to its last, inches between centres. */
export const spanOf = (group: Group, from: RunEnd, to: RunEnd): number =>
  spread(group, diameters(group, from, to)).at(-1) ?? 0;

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

/** Where the first post of a group stands; `nodes` are its posts, counted from the first. */
const startOf = (group: Group, nodes: readonly number[], from: RunEnd, to: RunEnd): number => {
  const span = nodes.at(-1) ?? 0;
  // what it lacks or has over to fill the run is the same at both ends, whichever the run begins at
  if (group.first && group.last) return (from.station + to.station - span) / 2;
  if (group.first) return from.station;
  return group.last ? to.station - span : freeStart(group.slots, nodes);
};

/**
 * The gates of a group in their places. A group that hangs on an end post of the run begins or ends
 * there, one that hangs on both lies evenly between; any other stands where its gates were put.
 */
export const seatGroup = (group: Group, from: RunEnd, to: RunEnd): Seat[] => {
  const ods = diameters(group, from, to);
  const nodes = spread(group, ods);
  const count = group.slots.length;
  const base = startOf(group, nodes, from, to);
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
