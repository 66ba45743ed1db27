import type { Segment } from '../../geometry/segment.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { GateId, MarkId } from '../../site/ids.ts';
import type { Pipe } from '../../site/pipe.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Leg } from '../layout.ts';
import type { Course } from './course.ts';
import { slotOf, widestLeaf, type KnownGate } from './gateSlots.ts';
import { holeFor } from './holeFor.ts';
import type { RunEnd, Slot } from './links.ts';
import { larger, type MarkPost } from './markPosts.ts';
import { seatGates, type Seating } from './seatGates.ts';
import { wallSetback } from './wallSetback.ts';

/** A course, where its end posts stand on it and where its gates sit. */
export interface SeatedCourse {
  readonly course: Course;
  readonly spec: FenceSpec;
  readonly from: RunEnd & { readonly wall: boolean };
  readonly to: RunEnd & { readonly wall: boolean };
  readonly slots: readonly Slot[];
  readonly seating: Seating;
}

/** What gates ask of a post at a mark that they share. */
export interface MarkBurden {
  readonly pipe: Pipe;
  readonly gates: readonly GateId[];
  readonly leaf: Inches;
}

/** Courses to be seated, with all that they share. */
export interface Ground {
  readonly courses: readonly { readonly course: Course; readonly spec: FenceSpec }[];
  readonly gates: ReadonlyMap<Leg['id'], readonly KnownGate[]>;
  readonly marks: ReadonlyMap<MarkId, MarkPost>;
  readonly walls: readonly Segment<'site'>[];
}

type Burdens = ReadonlyMap<MarkId, MarkBurden>;

const runEnd = (
  side: 'from' | 'to',
  course: Course,
  spec: FenceSpec,
  { marks, walls, burdens }: Ground & { burdens: Burdens },
): SeatedCourse['from'] => {
  const stop = course[side];
  const post = marks.get(stop.mark);
  const own = post?.pipe ?? spec.terminalPost;
  const { od } = burdens.get(stop.mark)?.pipe ?? own;
  const leg = side === 'from' ? course.legs[0] : course.legs.at(-1);
  // a wall further in than the run is long is no wall to stand off from
  const setback =
    post?.kind === 'end' && leg !== undefined
      ? wallSetback(walls, stop.at, leg.bearing, spec.wallGap + od / 2)
      : null;
  const wall = setback !== null && setback < course.length;
  const back = wall ? setback : 0;
  const hole = holeFor({ od: own.od, fabricHeight: spec.fabricHeight, leaf: null }).diameter;
  return { station: side === 'from' ? back : course.length - back, od, hole, wall };
};

const seatAll = (ground: Ground, burdens: Burdens): SeatedCourse[] =>
  ground.courses.map(({ course, spec }) => {
    const known = course.legs.flatMap(({ id }) => ground.gates.get(id) ?? []);
    const slots = known.flatMap((gate) => slotOf(gate, course, spec) ?? []);
    const from = runEnd('from', course, spec, { ...ground, burdens });
    const to = runEnd('to', course, spec, { ...ground, burdens });
    return { course, spec, from, to, slots, seating: seatGates(slots, from, to) };
  });

/** What the gates that share a post with a mark ask of it. */
const burdensOf = (seated: readonly SeatedCourse[], ground: Ground): Burdens => {
  const known = new Map([...ground.gates.values()].flat().map((gate) => [gate.id, gate.gate]));
  const burdens = new Map<MarkId, MarkBurden>();
  const add = (mark: MarkId, id: GateId, spec: FenceSpec): void => {
    const gate = known.get(id);
    const post = ground.marks.get(mark);
    if (gate === undefined || post === undefined) return;
    const before = burdens.get(mark) ?? { pipe: post.pipe, gates: [], leaf: inches(0) };
    burdens.set(mark, {
      pipe: larger(before.pipe, gate.post ?? spec.gatePost),
      gates: [...new Set([...before.gates, id])].toSorted(),
      leaf: inches(Math.max(before.leaf, widestLeaf(gate))),
    });
  };
  for (const { course, spec, seating } of seated) {
    for (const seat of seating.seats) {
      if (seat.startWith === 'run') add(course.from.mark, seat.id, spec);
      if (seat.endWith === 'run') add(course.to.mark, seat.id, spec);
    }
  }
  return burdens;
};

/**
 * Seats every gate of a site. Twice, since a gate that shares a corner post makes that post larger
 * for the runs on both sides of the corner.
 */
export const seatLines = (ground: Ground): { seated: SeatedCourse[]; burdens: Burdens } => {
  const first = burdensOf(seatAll(ground, new Map()), ground);
  const seated = seatAll(ground, first);
  return { seated, burdens: burdensOf(seated, ground) };
};
