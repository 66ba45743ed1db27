import { distance } from '../../geometry/distance.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import { slack } from '../../geometry/tolerance.ts';
import { anchoredAt, moveAnchor } from '../anchor.ts';
import { withAnchored, type Anchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { LineId, MarkId, VertexId } from '../ids.ts';
import type { DrawnLeg } from '../legsOf.ts';
import { splitWall } from '../splitWall.ts';
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
 * that half, if the mark lies off the leg). Both halves are stepped, or on a wall, where the leg was. A
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
  const share = shareAt(middle.site, whole, middle.mark);
  const split = withEntry(middle.site, 'lines', id, {
    ...line,
    path: withVertex(line.path, vertex, index),
    stepped:
      line.stepped[leg] === undefined ? line.stepped : { ...line.stepped, [vertex.id]: true },
    walls: wallsOf(line, { leg, next: vertex.id }, share),
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

/** How far along a leg, from 0 to 1, a mark is that parts it. */
const shareAt = (site: Site, leg: DrawnLeg, mark: MarkId): number => {
  const { start, end } = legGround(site, leg);
  const { x, y } = entry(site, 'marks', mark);
  const [before, after] = [distance(start, { x, y }), distance({ x, y }, end)];
  return before + after === 0 ? 0 : before / (before + after);
};

const wallsOf = (
  { walls }: FenceLine,
  { leg, next }: Pick<DrawnLeg, 'next'> & { readonly leg: VertexId },
  share: number,
): FenceLine['walls'] => {
  const wall = walls[leg];
  if (wall === undefined) return walls;
  const [first, second] = splitWall(wall, share);
  return { ...walls, [leg]: first, [next]: second };
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
