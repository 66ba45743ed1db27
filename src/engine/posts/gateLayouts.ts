import { midpoint } from '../../geometry/midpoint.ts';
import { moved } from '../../geometry/moved.ts';
import type { GateId } from '../../site/ids.ts';
import { radians } from '../../units/radians.ts';
import { leafLayouts } from '../gate/swing.ts';
import type { GateLayout } from '../layout.ts';
import { legOn, pointAt, type Course } from './course.ts';
import type { KnownGate } from './gateSlots.ts';
import { asPut, type Slot } from './links.ts';
import type { Seat } from './seatGroup.ts';
import type { RunRow } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';

type Stand = Pick<Seat, 'start' | 'end' | 'startOd' | 'endOd'>;

const putWhere = (slot: Slot): Stand => ({ ...asPut(slot), startOd: slot.od, endOd: slot.od });

const gateLayout = (
  known: KnownGate,
  course: Course,
  stand: Stand,
  posts: GateLayout['posts'],
): GateLayout => {
  const { id, gate, opening } = known;
  const [start, end] = [pointAt(course, stand.start), pointAt(course, stand.end)];
  const bearing = legOn(course, gate.leg)?.leg.bearing ?? radians(0);
  const faces = {
    start: moved(start, bearing, stand.startOd / 2),
    end: moved(end, bearing, -stand.endOd / 2),
    bearing,
  };
  return {
    id,
    line: gate.line,
    placed: posts !== null,
    opening,
    posts,
    start,
    end,
    middle: midpoint(faces.start, faces.end),
    bearing,
    leaves: leafLayouts(gate, opening, faces),
  };
};

/** The gates of one run: those that sit where they sit, those that do not where they were put. */
export const gateLayouts = (
  { course, slots, seating }: SeatedCourse,
  row: RunRow,
  gates: ReadonlyMap<GateId, KnownGate>,
): GateLayout[] => {
  const seats = new Map(seating.seats.map((seat) => [seat.id, seat]));
  const places = new Map(
    row.spaces.flatMap((space, n) => (space.kind === 'gate' ? [[space.gate, n] as const] : [])),
  );
  return slots.flatMap((slot) => {
    const known = gates.get(slot.id);
    if (known === undefined) return [];
    const seat = seats.get(slot.id);
    const place = places.get(slot.id) ?? -1;
    const [start, end] = [row.posts[place]?.post, row.posts[place + 1]?.post];
    const posts = start === undefined || end === undefined ? null : { start, end };
    return [gateLayout(known, course, seat ?? putWhere(slot), posts)];
  });
};
