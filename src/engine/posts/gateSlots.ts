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
}

/** The widest leaf of a gate, inches; 0 for a gate without leaves. */
export const widestLeaf = (gate: Gate): Inches =>
  inches(Math.max(0, ...leavesOf(gate).map(leafWidth)));

const anchorStation = ({ anchor }: Gate, from: number, length: number): number => {
  if (anchor.from === 'start') return from + anchor.offset;
  if (anchor.from === 'end') return from + length - anchor.offset;
  return from + length / 2 + anchor.offset;
};

/** The gate's wish for a place on the course that has its leg; null when that is another course. */
export const slotOf = (known: KnownGate, course: Course, spec: FenceSpec): Slot | null => {
  const own = legOn(course, known.gate.leg);
  if (own === null) return null;
  const { od } = known.gate.post ?? spec.gatePost;
  const leaf = widestLeaf(known.gate);
  return {
    id: known.id,
    width: known.opening.target,
    od,
    hole: holeFor({ od, fabricHeight: spec.fabricHeight, leaf }).diameter,
    held: known.gate.anchor.from,
    at: anchorStation(known.gate, own.from, own.leg.length),
  };
};
