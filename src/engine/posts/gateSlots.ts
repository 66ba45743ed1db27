import { arcOf } from '../../geometry/track.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { Opening } from '../opening.ts';
import { legOn, type Course } from './course.ts';
import { holeFor } from './holeFor.ts';
import type { Slot } from './links.ts';

/** A gate with what follows from it alone. */
export interface KnownGate {
  readonly id: GateId;
  readonly gate: Gate;
  readonly opening: Opening;
  /** How far apart its posts stand, inside faces, inches: its target, or as they were set. */
  readonly stands: Inches;
}

/** The widest leaf that hangs on a gate's posts, inches; null where none does: it rolls, or is a gap. */
export const widestHung = (gate: Gate): Inches | null =>
  gate.way.kind === 'swing' || gate.way.kind === 'centre stop'
    ? inches(Math.max(0, ...leavesOf(gate).map(leafWidth)))
    : null;

/** The wider of two leaves, of which either may not be there. */
export const wider = (a: Inches | null, b: Inches | null): Inches | null =>
  a === null || b === null ? (a ?? b) : inches(Math.max(a, b));

const anchorStation = ({ anchor }: Gate, from: number, length: number): number => {
  if (anchor.from === 'start') return from + anchor.offset;
  if (anchor.from === 'end') return from + length - anchor.offset;
  return from + length / 2 + anchor.offset;
};

/**
 * The gate's wish for a place on the course that has its leg; null when that is another course, and
 * for a gate whose leaves leave nothing to close.
 */
export const slotOf = (known: KnownGate, course: Course, spec: FenceSpec): Slot | null => {
  const own = legOn(course, known.gate.leg);
  if (own === null || known.opening.target <= 0) return null;
  const post = known.gate.post ?? spec.gatePost;
  const leaf = widestHung(known.gate);
  return {
    id: known.id,
    width: known.stands,
    od: post.od,
    hole: holeFor({ post, fabricHeight: spec.fabricHeight, leaf, wall: course.wall }).diameter,
    radius: arcOf(own.leg)?.radius ?? null,
    held: known.gate.anchor.from,
    at: anchorStation(known.gate, own.from, own.leg.length),
  };
};
