import { moveAnchorOnto } from '../anchor.ts';
import { withAnchored, withoutAnchored, type Anchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import { flipped } from '../flipped.ts';
import type { LineId, VertexId } from '../ids.ts';
import { distance } from '../../geometry/distance.ts';
import { joinedBow } from '../bows.ts';
import { legTrack } from '../legTrack.ts';
import { legGround } from '../legGround.ts';
import { keptLegNotes } from '../legNotes.ts';
import { legsOf } from '../legsOf.ts';
import type { DrawnLeg } from '../legsOf.ts';
import { withoutUnused } from '../marksInUse.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { removeLine } from './removeLine.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Takes a vertex out of a line, and its mark if nothing else stands on it and nothing keeps it
 * (`withoutUnused`); the legs before and after become one. Gates and pins of these legs keep their
 * place on the ground where the joined leg passes it, else they stand at its nearer end; past an end
 * of the line they go to the leg that is the last now. A closed line left with two marks opens. A line
 * loses both with its last leg, and goes with its last vertex. RangeError for an unknown line or
 * vertex.
 */
export const removeVertex = (site: Site, id: LineId, vertex: VertexId): Site => {
  const line = entry(site, 'lines', id);
  const gone = line.path[vertex];
  if (!Object.hasOwn(line.path, vertex) || gone === undefined) {
    throw new RangeError(
      phrase`lines › ${id} › path: expected a vertex of it, found ${quoted(vertex)}`,
    );
  }
  if (Object.keys(line.path).length === 1) return removeLine(site, id);
  const rehung = rehang(site, id, vertex);
  const path = Object.fromEntries(Object.entries(line.path).filter(([stop]) => stop !== vertex));
  const closed = line.closed && Object.keys(path).length > 2;
  // the vertex before a last one that goes starts no leg any more
  const starts = new Set(legsOf({ path, closed }).map((leg) => leg.id));
  const shorter = withEntry(rehung, 'lines', id, {
    ...line,
    closed,
    path,
    ...keptLegNotes(line, (leg) => starts.has(leg)),
    curved: joinedCurves(site, line, vertex, starts),
  });
  return withoutUnused(site, shorter, [gone.mark]);
};

/** The site with every gate and pin of the line on a leg that is still there without the vertex. */
const rehang = (site: Site, id: LineId, vertex: VertexId): Site => {
  const line = entry(site, 'lines', id);
  const legs = legsOf(line);
  const joined = joinedLeg(legs, vertex);
  if (joined === null) {
    return withoutAnchored(site, id);
  }
  const lost = legs.filter((leg) => leg.id === vertex || leg.next === vertex);
  const ground = {
    ...legGround(site, joined),
    bow: joinedCurves(site, line, vertex)[joined.id] ?? 0,
  };
  return withAnchored(site, id, (thing) => {
    const old = lost.find((leg) => leg.id === thing.leg);
    if (old === undefined) return opened(thing, line, vertex);
    const anchor = moveAnchorOnto(thing.anchor, legTrack(site, line, old), ground);
    return opened({ ...thing, leg: joined.id, anchor }, line, vertex);
  });
};

/** The bows of a line without a vertex: what the legs before and after it make of theirs. */
const joinedCurves = (
  site: Site,
  line: FenceLine,
  vertex: VertexId,
  starts: ReadonlySet<VertexId> = new Set(legsOf(line).map((leg) => leg.id)),
): FenceLine['curved'] => {
  const legs = legsOf(line);
  const kept = Object.entries(line.curved).filter(
    ([leg]) => leg !== vertex && starts.has(leg as VertexId),
  );
  const before = legs.find((leg) => leg.next === vertex);
  const after = legs.find((leg) => leg.id === vertex);
  if (before === undefined || after === undefined) return Object.fromEntries(kept);
  const { start, end } = legGround(site, { start: before.start, end: after.end });
  const [first, second] = [legTrack(site, line, before), legTrack(site, line, after)];
  const bow = joinedBow(first, second, distance(start, end));
  const others = kept.filter(([leg]) => leg !== before.id);
  return Object.fromEntries(bow === 0 ? others : [...others, [before.id, bow] as const]);
};

/** The leg that takes the place of those that end at a vertex; null when none is left. */
const joinedLeg = (legs: readonly DrawnLeg[], vertex: VertexId): DrawnLeg | null => {
  const before = legs.find((leg) => leg.next === vertex);
  const after = legs.find((leg) => leg.id === vertex);
  if (before !== undefined && after !== undefined) {
    return before.id === after.next ? null : { ...before, next: after.next, end: after.end };
  }
  return (before === undefined ? legs[1] : legs.at(-2)) ?? null;
};

/** What stands on a triangle that opens to a single leg: on the way back, it is told the other way. */
const opened = <Thing extends Anchored>(thing: Thing, line: FenceLine, vertex: VertexId): Thing => {
  if (!line.closed || Object.keys(line.path).length !== 3) return thing;
  const [first] = legsOf(line).filter((leg) => leg.id !== vertex);
  return first === undefined || thing.leg === first.id ? thing : flipped(thing, first.id);
};
