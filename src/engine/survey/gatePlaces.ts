import { nearestOnTrack, trackLength } from '../../geometry/track.ts';
import { anchorAt, anchoredAt } from '../../site/anchor.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateId, MarkId } from '../../site/ids.ts';
import { legsOf } from '../../site/legsOf.ts';
import type { Site } from '../../site/site.ts';
import type { Inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { Layout } from '../layout.ts';
import type { Held } from './held.ts';
import { placeError, type Place } from './placeError.ts';

/** What is laid out of a site before it is asked how well it is known. */
export type Stood = Pick<Layout, 'lines' | 'gates'>;

const legMarks = (site: Site, gate: Gate): readonly [MarkId, MarkId] | null => {
  const line = site.lines[gate.line];
  const leg = line === undefined ? undefined : legsOf(line).find(({ id }) => id === gate.leg);
  return leg === undefined ? null : [leg.start, leg.end];
};

/**
 * The middle of the opening of a gate, as it follows from the ends of its leg: told from the end or the
 * middle that the gate is anchored to. Null for a gate that is not placed.
 */
const middleOf = (site: Site, { lines, gates }: Stood, id: GateId): Place | null => {
  const [gate, laid] = [site.gates[id], gates[id]];
  const marks = gate === undefined ? null : legMarks(site, gate);
  const leg = lines[gate?.line ?? 'line:']?.legs.find((one) => one.id === gate?.leg);
  if (gate === undefined || marks === null || leg === undefined || laid?.placed !== true)
    return null;
  const { bow, start, end } = leg;
  const { along } = nearestOnTrack(laid.middle, leg);
  const anchor = anchorAt(gate.anchor.from, along, trackLength(leg));
  return { marks, at: [start, end], of: (a, b) => anchoredAt(anchor, { start: a, end: b, bow }) };
};

/**
 * How far off the middle of each opening may be on the ground, inches, as `placeError` has it; none for
 * a gate of which that cannot be said.
 */
export const gatePlaces = (
  site: Site,
  { held, stood, carry }: { readonly held: Held; readonly stood: Stood; readonly carry: Carry },
): Readonly<Record<GateId, Inches>> => {
  const ids = Object.keys(stood.gates) as GateId[];
  const found = ids.flatMap((id) => {
    const from = [
      held,
      site.gates[id],
      site.lines[site.gates[id]?.line ?? 'line:'],
      stood.gates[id],
    ];
    const error = carry.shelf<Inches | null>('gate place').take(id, from, () => {
      const place = middleOf(site, stood, id);
      return place === null ? null : placeError(held, place);
    });
    return error === null ? [] : [[id, error] as const];
  });
  return Object.fromEntries(found);
};
