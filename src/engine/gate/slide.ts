import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateWay } from '../../site/gateWay.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { SlideLayout } from '../layout.ts';
import { leafThickness } from './leafThickness.ts';
import type { Doorway } from './swing.ts';
import { leavesOf } from './termsOf.ts';

/** The post at which a leaf rolls in, by the end of the leg it is nearer to, and the ways from it. */
export interface RollEnd {
  readonly end: 'start' | 'end';
  /** Its inside face. */
  readonly face: SitePoint;
  /** From the face into the opening, and square to it to where the leaf runs. */
  readonly into: Radians;
  readonly aside: Radians;
}

/** The ends at which the leaves of a gate roll in, one for each leaf from the start of the leg. */
export const rollEnds = (gate: Gate, { start, end, bearing }: Doorway): RollEnd[] => {
  if (gate.way.kind !== 'cantilever') return [];
  const quarter = gate.opens === 'left' ? Math.PI / 2 : -Math.PI / 2;
  const aside = principalAngle(bearing + quarter);
  const back = principalAngle(bearing + Math.PI);
  const both: readonly RollEnd[] = [
    { end: 'start', face: start, into: bearing, aside },
    { end: 'end', face: end, into: back, aside },
  ];
  const { stores } = gate.way;
  return leavesOf(gate).length === 1 ? both.filter((one) => one.end === stores) : [...both];
};

/** How far from the fence line a leaf runs: before its roller posts where there is room, else behind. */
const runsAside = (behind: number, od: Inches, postOd: Inches, thickness: Inches): number => {
  const before = behind - (od + thickness) / 2;
  return before >= (postOd + thickness) / 2 ? before : behind + (od + thickness) / 2;
};

/** Outside diameters that decide where a leaf runs, inches: of its rollers' posts, of the gate's. */
export interface SlidePosts {
  readonly roller: Inches;
  readonly gate: Inches;
}

const tailOf = ({ overlap, counterbalance }: Extract<GateWay, { kind: 'cantilever' }>): number =>
  overlap + counterbalance;

/**
 * Each leaf that rolls, as its middle line on the ground: closed it reaches past the face of its
 * first roller post by overlap and counterbalance; rolled aside its front is flush with that face,
 * so that it wants its whole length of room behind. None for a gate that does not roll.
 */
export const slideLayouts = (gate: Gate, doorway: Doorway, ods: SlidePosts): SlideLayout[] => {
  const { way } = gate;
  if (way.kind !== 'cantilever') return [];
  const ends = rollEnds(gate, doorway);
  return leavesOf(gate).flatMap((leaf, n): SlideLayout[] => {
    const end = ends[n];
    if (end === undefined) return [];
    const [width, thickness] = [leafWidth(leaf), leafThickness(leaf)];
    const off = runsAside(way.behind, ods.roller, ods.gate, thickness);
    const from = moved(end.face, end.aside, off);
    const along = (tail: number) => ({
      start: moved(from, radians(end.into), -tail),
      end: moved(from, radians(end.into), width - tail),
    });
    return [{ id: leaf.id, width, thickness, closed: along(tailOf(way)), stored: along(width) }];
  });
};
