import { bearing as bearingOf } from '../../geometry/bearing.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import { halvesOf } from '../gate/halvesOf.ts';
import { receiverOf } from '../gate/receiverOf.ts';
import { slideLayouts } from '../gate/slide.ts';
import { leafLayouts, type Doorway } from '../gate/swing.ts';
import type { GateLayout } from '../layout.ts';
import { legOn, pointAt, type Course } from './course.ts';
import type { KnownGate } from './gateSlots.ts';
import { rollerPipe } from './gateStands.ts';
import { asPut, type Slot } from './links.ts';
import type { Seat } from './seatGroup.ts';
import type { RunRow } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';

type Stand = Pick<Seat, 'start' | 'end' | 'startOd' | 'endOd'>;

const putWhere = (slot: Slot): Stand => ({ ...asPut(slot), startOd: slot.od, endOd: slot.od });

/** Middle of the stop between two leaves: half way in, where both openings are as planned. */
const stopAt = (
  { gate, opening }: KnownGate,
  { start, end, bearing }: Doorway,
): SitePoint | null => {
  const halves = halvesOf(opening);
  if (halves === null || gate.way.kind !== 'centre stop') return null;
  const [first, second] = halves.map(({ target }) => target);
  const half = gate.way.stop / 2;
  return midpoint(
    moved(start, bearing, (first ?? 0) + half),
    moved(end, bearing, -(second ?? 0) - half),
  );
};

interface Known {
  readonly site: Site;
  readonly known: KnownGate;
  readonly course: Course;
}

const gateLayout = (
  { site, known, course }: Known,
  stand: Stand,
  posts: GateLayout['posts'],
): GateLayout => {
  const { id, gate, opening, stands } = known;
  const [start, end] = [pointAt(course, stand.start), pointAt(course, stand.end)];
  // across a curve it stands on the chord between its posts
  const bearing =
    course.bow === 0 ? (legOn(course, gate.leg)?.leg.bearing ?? radians(0)) : bearingOf(start, end);
  const faces = {
    start: moved(start, bearing, stand.startOd / 2),
    end: moved(end, bearing, -stand.endOd / 2),
    bearing,
  };
  const leaves = leafLayouts(site, gate, opening, faces);
  const ends = inches(Math.max(stand.startOd, stand.endOd));
  return {
    id,
    line: gate.line,
    placed: posts !== null,
    opening,
    stands,
    posts,
    start,
    end,
    middle: midpoint(faces.start, faces.end),
    bearing,
    leaves,
    slides: slideLayouts(gate, faces, { roller: rollerPipe(gate).od, gate: ends }),
    stop: stopAt(known, faces),
    receiver: receiverOf(gate, leaves),
  };
};

/** The gates of one run: those that sit where they sit, those that do not where they were put. */
export const gateLayouts = (
  { course, slots, seating, known: all }: SeatedCourse,
  row: RunRow,
  site: Site,
): GateLayout[] => {
  if (slots.length === 0) return [];
  const gates = new Map(all.map((gate) => [gate.id, gate]));
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
    return [gateLayout({ site, known, course }, seat ?? putWhere(slot), posts)];
  });
};
