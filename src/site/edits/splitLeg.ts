import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import { slack } from '../../geometry/tolerance.ts';
import { anchoredAt, moveAnchor } from '../anchor.ts';
import { withAnchored, type Anchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt, legGround } from '../legGround.ts';
import { markAt } from '../markAt.ts';
import type { Place } from '../markAt.ts';
import { nextId } from '../nextId.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { withVertex } from '../withVertex.ts';

/**
 * Puts a mark into a leg of a line: one that is there, or a point that becomes one. A gate or pin of
 * that leg goes with the half that its anchor is nearer to and keeps its place on the ground (square to
 * that half, if the mark lies off the leg). Both halves are stepped where the leg was. A
 * mark at an end of the leg changes nothing. RangeError
 * for an unknown line, leg or mark.
 */
export const splitLeg = (site: Site, id: LineId, leg: VertexId, place: Place): Site => {
  const line = entry(site, 'lines', id);
  const whole = legAt(line, leg);
  if (place === whole.start || place === whole.end) return site;
  const middle = markAt(site, place);
  const vertex = { id: nextId(site, 'vertex'), mark: middle.mark };
  const index = verticesOf(line.path).findIndex((stop) => stop.id === leg) + 1;
  const split = withEntry(middle.site, 'lines', id, {
    ...line,
    path: withVertex(line.path, vertex, index),
    stepped:
      line.stepped[leg] === undefined ? line.stepped : { ...line.stepped, [vertex.id]: true },
  });
  const ground = legGround(split, whole);
  const halves = [
    { leg, ground: legGround(split, { start: whole.start, end: middle.mark }) },
    { leg: vertex.id, ground: legGround(split, { start: middle.mark, end: whole.end }) },
  ] as const;
  return withAnchored(split, id, (thing) =>
    thing.leg === leg ? ontoHalf(thing, ground, halves) : thing,
  );
};

type Ground = ReturnType<typeof legGround>;
type Half = { readonly leg: VertexId; readonly ground: Ground };

const ontoHalf = <Thing extends Anchored>(
  thing: Thing,
  whole: Ground,
  [first, second]: readonly [Half, Half],
): Thing => {
  const spot = anchoredAt(thing.anchor, whole);
  const offFirst = nearestOnSegment(spot, first.ground).distance;
  const offSecond = nearestOnSegment(spot, second.ground).distance;
  // one held at the very mark belongs to the half that it reaches into
  const bias = thing.anchor.from === 'start' ? slack : -slack;
  const half = offSecond < offFirst + bias ? second : first;
  return { ...thing, leg: half.leg, anchor: moveAnchor(thing.anchor, whole, half.ground) };
};
