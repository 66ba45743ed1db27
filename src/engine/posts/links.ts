import type { GateId } from '../../site/ids.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Inches } from '../../units/inches.ts';

/** A gate that wants a place on a run; lengths and stations in inches. */
export interface Slot {
  readonly id: GateId;
  /** Its opening, and what its own posts measure and need for a hole. */
  readonly width: Inches;
  readonly od: Inches;
  readonly hole: Inches;
  /** Of the curve that it stands on; null on straight fence. */
  readonly radius: number | null;
  /** Where it was put: the centre of its first post, of its second, or of the opening. */
  readonly held: 'start' | 'end' | 'middle';
  readonly at: number;
}

/** The post at one end of a run: where its centre stands, its diameter and its hole. */
export interface RunEnd {
  readonly station: number;
  readonly od: Inches;
  readonly hole: Inches;
}

/**
 * How far apart the centres of a gate's two posts are along its run, for posts of two diameters:
 * straight across it is the opening and half of each; more than a curve is wide goes on past it.
 */
export const acrossOf = (
  { width, radius }: Pick<Slot, 'width' | 'radius'>,
  a: number,
  b: number,
): number => {
  const chord = width + (a + b) / 2;
  if (radius === null) return chord;
  const most = 2 * radius;
  return most * Math.asin(Math.min(1, chord / most)) + Math.max(0, chord - most);
};

/** Centres of the two posts of a gate as it was put, with posts of its own. */
export const asPut = (slot: Slot): { start: number; end: number } => {
  const { od, held, at } = slot;
  const across = acrossOf(slot, od, od);
  if (held === 'start') return { start: at, end: at + across };
  if (held === 'end') return { start: at - across, end: at };
  return { start: at - across / 2, end: at + across / 2 };
};

/** Posts whose holes would meet become one; holes that just touch do not, however it is rounded. */
const meet = (a: { hole: Inches }, b: { hole: Inches }, apart: number): boolean =>
  apart < (a.hole + b.hole) / 2 - slack;

/**
 * A single gate that would share both end posts may do so only if it fills the run to this, in
 * inches: the finest that a tape is read to when posts are set (1/16 in; common practice, no
 * published source).
 */
export const fills = 1 / 16;

/** Which end posts the outermost gates share: those that they were put near enough to. */
export const endLinks = (slots: readonly Slot[], first: RunEnd, last: RunEnd) => {
  const [one, other] = [slots[0], slots.at(-1)];
  if (one === undefined || other === undefined) return { first: false, last: false };
  const before = Math.abs(asPut(one).start - first.station);
  const after = Math.abs(asPut(other).end - last.station);
  const links = { first: meet(one, first, before), last: meet(other, last, after) };
  if (!links.first || !links.last || one !== other) return links;
  const filled = acrossOf(one, Math.max(one.od, first.od), Math.max(one.od, last.od));
  if (Math.abs(last.station - first.station - filled) <= fills + slack) return links;
  // it cannot reach both: it goes to the nearer, and to neither from the very middle
  const even = Math.abs(before - after) < fills - slack;
  return { first: !even && before < after, last: !even && after < before };
};

/**
 * Whether two neighbouring gates share the post between them, `gap` inches from the centre of the
 * one's last post to that of the other's first. Gates that lie over each other by more than half
 * the narrower opening stand in one place, however wide their holes are, and share nothing.
 */
export const shares = (a: Slot, b: Slot, gap: number): boolean =>
  meet(a, b, Math.abs(gap)) && gap + Math.min(a.width, b.width) / 2 > slack;
