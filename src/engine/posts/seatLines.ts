import type { Segment } from '../../geometry/segment.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { GateId, LineId, MarkId } from '../../site/ids.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { Leg } from '../layout.ts';
import type { AskedCourse, LineCourses } from './askedCourses.ts';
import { wayAt, type Course } from './course.ts';
import { slotOf, wider, widestHung, type KnownGate } from './gateSlots.ts';
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
  readonly known: readonly KnownGate[];
  readonly slots: readonly Slot[];
  readonly seating: Seating;
}

/** What gates ask of a post at a mark that they share. */
export interface MarkBurden {
  readonly pipe: PostPipe;
  readonly gates: readonly GateId[];
  /** The widest leaf that hangs there; null for none. */
  readonly leaf: Inches | null;
  /** Height above ground that the highest of the gates asks for, inches. */
  readonly above: Inches;
}

/** The seated courses of one line. */
export interface SeatedLine extends Pick<LineCourses, 'id' | 'ends'> {
  readonly seated: readonly SeatedCourse[];
}

/** Courses to be seated, line by line, with all that they share. */
export interface Ground {
  readonly lines: readonly LineCourses[];
  readonly gates: ReadonlyMap<LineId, ReadonlyMap<Leg['id'], readonly KnownGate[]>>;
  readonly marks: ReadonlyMap<MarkId, MarkPost>;
  readonly walls: readonly Segment<'site'>[];
  readonly carry: Carry;
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
  const way = wayAt(course, side === 'from' ? 0 : course.length);
  // a wall further in than the run is long is no wall to stand off from
  const setback =
    post?.kind === 'end' ? wallSetback(walls, stop.at, way, spec.wallGap + od / 2) : null;
  const wall = setback !== null && setback < course.length;
  const back = wall ? setback : 0;
  const demand = { post: own, fabricHeight: spec.fabricHeight, leaf: null, wall: course.wall };
  const hole = holeFor(demand).diameter;
  return { station: side === 'from' ? back : course.length - back, od, hole, wall };
};

/** Two walls nearer to each other than their posts allow: no post stands off either of them. */
const apart = (from: SeatedCourse['from'], to: SeatedCourse['to'], course: Course) =>
  from.station < to.station
    ? { from, to }
    : {
        from: { ...from, station: 0, wall: false },
        to: { ...to, station: course.length, wall: false },
      };

const seatCourse = (
  { course, spec }: AskedCourse,
  known: readonly KnownGate[],
  shared: Ground & { burdens: Burdens },
): SeatedCourse => {
  const slots = known.flatMap((gate) => slotOf(gate, course, spec) ?? []);
  const ends = apart(
    runEnd('from', course, spec, shared),
    runEnd('to', course, spec, shared),
    course,
  );
  const seating = seatGates(slots, ends.from, ends.to);
  return { course, spec, ...ends, known, slots, seating };
};

const noGates: ReadonlyMap<Leg['id'], readonly KnownGate[]> = new Map();

/** Seats the courses of one line. */
const seatLine = (
  { courses }: LineCourses,
  shared: Ground & { burdens: Burdens },
  { id, carry }: { readonly id: LineId; readonly carry: Carry },
): readonly SeatedCourse[] => {
  const { marks, walls, burdens } = shared;
  const onLine = shared.gates.get(id) ?? noGates;
  const shelf = carry.shelf<SeatedCourse>('seated course');
  const seated = courses.map((asked) => {
    const { course, spec } = asked;
    const known =
      onLine.size === 0 ? [] : course.legs.flatMap(({ id: leg }) => onLine.get(leg) ?? []);
    const from: unknown[] = [course, spec, walls];
    for (const { mark } of [course.from, course.to]) {
      from.push(marks.get(mark), burdens.get(mark)?.pipe);
    }
    from.push(...known);
    return shelf.take(course.key, from, () => seatCourse(asked, known, shared));
  });
  return carry.shelf<readonly SeatedCourse[]>('seated courses').list('', seated);
};

/** The marks of a line that gates share, with the pipes that they ask for. */
const burdensOn = ({ ends }: LineCourses, burdens: Burdens): unknown[] =>
  [...burdens].flatMap(([mark, { pipe }]) => (ends.has(mark) ? [mark, pipe] : []));

const seatAll = (ground: Ground, burdens: Burdens): SeatedLine[] => {
  const { lines, marks, walls, gates, carry } = ground;
  const shelf = carry.shelf<SeatedLine>('seated line');
  const shared = { ...ground, burdens };
  return lines.map((line) => {
    const { id, courses, ends } = line;
    const known = [...(gates.get(id) ?? noGates).values()].flat();
    const from = [courses, walls, marks, known.length, ...known, ...burdensOn(line, burdens)];
    return shelf.part(id, from, (own) => ({
      id,
      ends,
      seated: seatLine(line, shared, { id, carry: own }),
    }));
  });
};

/** A burden with one more gate on it. */
const loaded = (before: MarkBurden, { id, gate }: KnownGate, spec: FenceSpec): MarkBurden => ({
  pipe: larger(before.pipe, gate.post ?? spec.gatePost),
  gates: [...new Set([...before.gates, id])].toSorted(),
  leaf: wider(before.leaf, widestHung(gate)),
  above: inches(Math.max(before.above, spec.fabricHeight + spec.terminalAbove)),
});

/**
 * What the gates that share a post with a mark ask of it. A pipe that was reckoned with before
 * stays, even where the gate moved off: openings were measured from its face.
 */
const burdensOf = (lines: readonly SeatedLine[], ground: Ground, before: Burdens): Burdens => {
  const burdens = new Map<MarkId, MarkBurden>();
  for (const [mark, { pipe }] of before) {
    burdens.set(mark, { pipe, gates: [], leaf: null, above: inches(0) });
  }
  const add = (mark: MarkId, gate: KnownGate | undefined, spec: FenceSpec): void => {
    const post = ground.marks.get(mark);
    if (gate === undefined || post === undefined) return;
    const { pipe, above } = post;
    const bare = { pipe, gates: [], leaf: null, above };
    burdens.set(mark, loaded(burdens.get(mark) ?? bare, gate, spec));
  };
  for (const { seated } of lines) {
    for (const { course, spec, known, seating } of seated) {
      for (const seat of seating.seats) {
        const gate = known.find(({ id }) => id === seat.id);
        if (seat.startWith === 'run') add(course.from.mark, gate, spec);
        if (seat.endWith === 'run') add(course.to.mark, gate, spec);
      }
    }
  }
  return burdens;
};

const samePipes = (a: Burdens, b: Burdens): boolean =>
  a.size === b.size && [...b].every(([mark, { pipe }]) => a.get(mark)?.pipe.od === pipe.od);

/** Posts only grow from round to round; two or three settle every yard that was not made to vex. */
const mostRounds = 8;

/**
 * Seats every gate of a site; again as long as a gate that shares a corner post makes that post
 * larger for the runs on both sides of the corner.
 */
export const seatLines = (ground: Ground): { seated: SeatedLine[]; burdens: Burdens } => {
  let before: Burdens = new Map();
  for (let round = 1; ; round += 1) {
    const seated = seatAll(ground, before);
    const burdens = burdensOf(seated, ground, before);
    if (round === mostRounds || samePipes(before, burdens)) return { seated, burdens };
    before = burdens;
  }
};
