import type { GateId, LineId } from '../../site/ids.ts';
import type { Leg } from '../layout.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { KnownGate } from './gateSlots.ts';
import { seatLines, type Ground, type SeatedCourse, type SeatedLine } from './seatLines.ts';

type Gates = ReadonlyMap<GateId, KnownGate>;

/** Gates by the line and leg that they stand in: two lines may use one vertex id. */
const byLeg = (gates: Gates): Ground['gates'] => {
  const lines = new Map<LineId, Map<Leg['id'], KnownGate[]>>();
  for (const known of gates.values()) {
    const { line, leg } = known.gate;
    const legs = lines.get(line) ?? new Map<Leg['id'], KnownGate[]>();
    const same = legs.get(leg) ?? [];
    same.push(known);
    lines.set(line, legs.set(leg, same));
  }
  return lines;
};

const asPlanned = (known: KnownGate): KnownGate => ({ ...known, stands: known.opening.target });

const isSet = ({ stands, opening }: KnownGate): boolean =>
  Math.abs(stands - opening.target) > slack;

/** Which posts every gate of a course has, whatever its width; a gate that has no place has none. */
const postsOn = ({ seating }: SeatedCourse): string =>
  [
    ...seating.seats.map(({ id, startWith, endWith, startOd, endOd }) =>
      [id, startWith, endWith, startOd, endOd].join(' '),
    ),
    ...seating.misfits.map(({ id }) => id).toSorted(),
  ].join('|');

/** Courses that have other posts than planned. */
const astray = (
  seated: readonly SeatedLine[],
  planned: readonly SeatedLine[],
): readonly SeatedCourse[] =>
  seated.flatMap((line, n) =>
    line.seated.filter((course, k) => {
      const before = planned[n]?.seated[k];
      if (before === course) return false;
      return before === undefined || postsOn(before) !== postsOn(course);
    }),
  );

/**
 * Seats every gate of a site, those that were set at the width at which their posts stand. Where
 * that would give a course other posts than planned (no room, or a post shared or shared no more)
 * its gates stand as planned: what an opening was signed for is not changed by what was set.
 */
export const seatAsSet = (
  ground: Omit<Ground, 'gates'>,
  gates: Gates,
): ReturnType<typeof seatLines> & { readonly gates: Gates } => {
  const seat = (all: Gates) => ({ ...seatLines({ ...ground, gates: byLeg(all) }), gates: all });
  const shelf = ground.carry.shelf<KnownGate>('gate as planned');
  const planAgain = (known: KnownGate) => shelf.take(known.id, [known], () => asPlanned(known));
  const planned = new Map([...gates].map(([id, known]) => [id, planAgain(known)] as const));
  const before = seat(planned);
  if (![...gates.values()].some(isSet)) return before;
  let now: Gates = gates;
  // every round puts at least one gate back
  for (;;) {
    const found = seat(now);
    const courses = astray(found.seated, before.seated);
    if (courses.length === 0) return found;
    const back = new Set(courses.flatMap(({ known }) => known.filter(isSet).map(({ id }) => id)));
    if (back.size === 0) return before;
    now = new Map(
      [...now].map(([id, known]) => [id, back.has(id) ? planAgain(known) : known] as const),
    );
  }
};
