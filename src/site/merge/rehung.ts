import { slack } from '../../geometry/tolerance.ts';
import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { nearestOnTrack } from '../../geometry/track.ts';
import { anchoredAt, moveAnchorOnto } from '../anchor.ts';
import type { Anchored } from '../anchoredOn.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { VertexId } from '../ids.ts';
import { legsOf, type DrawnLeg } from '../legsOf.ts';
import { legTrack } from '../legTrack.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { same } from './same.ts';

type MapName = 'gates' | 'pins';

const thingIn = (site: Site, map: MapName, id: string): Anchored | undefined =>
  (site[map] as Readonly<Record<string, Anchored>>)[id];

const lineIn = (site: Site, { line }: Anchored): FenceLine | undefined => site.lines[line];

const legIn = (site: Site, thing: Anchored): DrawnLeg | undefined => {
  const line = lineIn(site, thing);
  return line === undefined ? undefined : legsOf(line).find(({ id }) => id === thing.leg);
};

/** Where on the ground a gate or pin stands; null where its leg is not there. */
const groundOf = (site: Site, thing: Anchored): SitePoint | null => {
  const [line, leg] = [lineIn(site, thing), legIn(site, thing)];
  if (line === undefined || leg === undefined) return null;
  return anchoredAt(thing.anchor, legTrack(site, line, leg));
};

/** The way that the leg of a gate or pin runs, from its start to its end. */
const wayOf = (site: Site, thing: Anchored): SitePoint | null => {
  const [line, leg] = [lineIn(site, thing), legIn(site, thing)];
  if (line === undefined || leg === undefined) return null;
  const { start, end } = legTrack(site, line, leg);
  return subtract(end, start);
};

/**
 * Whether a gate or pin stands in both documents on one place of one line and looks the same way, however
 * that is told.
 */
export const standsStill = (before: Site, now: Site, map: MapName, id: string): boolean => {
  const [was, is] = [thingIn(before, map, id), thingIn(now, map, id)];
  if (was === undefined || is === undefined || was.line !== is.line) return false;
  if (was.anchor.from !== is.anchor.from) return false;
  const [from, to] = [groundOf(before, was), groundOf(now, is)];
  const [way, wayNow] = [wayOf(before, was), wayOf(now, is)];
  if (from === null || to === null || way === null || wayNow === null) return false;
  return distance(from, to) < slack && dot(way, wayNow) > 0;
};

const placeOf = ({ line, leg, anchor }: Anchored): unknown => ({ line, leg, anchor });

/** The legs of `line` that took the place of one of another document, by its corners that are still there. */
const legsInstead = (line: FenceLine, before: FenceLine, leg: DrawnLeg): readonly DrawnLeg[] => {
  const legs = legsOf(line);
  const there = (id: VertexId): boolean => Object.hasOwn(line.path, id);
  const row = verticesOf(before.path).map(({ id }) => id);
  const at = row.indexOf(leg.id);
  const start = row.slice(0, at + 1).findLast(there);
  const round = [...row.slice(at + 1), ...(before.closed ? row : [])];
  const end = round.find(there);
  const from = legs.findIndex(({ id }) => id === start);
  const onward =
    from < 0 ? legs : [...legs.slice(from), ...(line.closed ? legs.slice(0, from) : [])];
  const last = onward.findIndex(({ next }) => next === end);
  const between = last < 0 ? onward : onward.slice(0, last + 1);
  return between.length > 0 ? between : legs;
};

const rehungThing = <Thing extends Anchored>(site: Site, thing: Thing, from: Site): Thing => {
  const [line, before, leg] = [lineIn(site, thing), lineIn(from, thing), legIn(from, thing)];
  if (line === undefined || before === undefined || leg === undefined) return thing;
  const was = legTrack(from, before, leg);
  const at = anchoredAt(thing.anchor, was);
  const legs = legsInstead(line, before, leg).map((one) => {
    const track = legTrack(site, line, one);
    return { id: one.id, track, off: nearestOnTrack(at, track).off };
  });
  const [nearest] = legs.toSorted((a, b) => a.off - b.off);
  if (nearest === undefined) return thing;
  const anchor = moveAnchorOnto(thing.anchor, was, nearest.track);
  return { ...thing, leg: nearest.id, anchor };
};

/**
 * A document in which every gate and pin stands on a leg that is there: where a copy split, joined or took out
 * the leg that the other one hung it on, it keeps its place on the ground, or goes to the nearest leg of those
 * that took its leg's place. `copies` are where it may come from, the likelier first.
 */
export const rehung = (site: Site, copies: readonly Site[]): Site => {
  const things = <Thing extends Anchored>(map: MapName): Readonly<Record<string, Thing>> =>
    Object.fromEntries(
      Object.entries(site[map] as Readonly<Record<string, Thing>>).map(([id, thing]) => {
        const next = legIn(site, thing)?.next;
        const from = copies.filter((copy) => {
          const own = thingIn(copy, map, id);
          return own !== undefined && same(placeOf(own), placeOf(thing));
        });
        if (next !== undefined && from.some((copy) => legIn(copy, thing)?.next === next)) {
          return [id, thing];
        }
        const origin = from.find((copy) => legIn(copy, thing) !== undefined);
        return [id, origin === undefined ? thing : rehungThing(site, thing, origin)];
      }),
    );
  return { ...site, gates: things('gates'), pins: things('pins') };
};
