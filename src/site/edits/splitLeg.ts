import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { slack } from '../../geometry/tolerance.ts';
import { nearestOnTrack, trackLength, type Track } from '../../geometry/track.ts';
import { splitBows } from '../bows.ts';
import { legTrack } from '../legTrack.ts';
import { anchoredAt, moveAnchor } from '../anchor.ts';
import { withAnchored, type Anchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { LineId, VertexId } from '../ids.ts';
import type { DrawnLeg } from '../legsOf.ts';
import { splitWall } from '../splitWall.ts';
import { legAt } from '../legGround.ts';
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
 * that half, if the mark lies off the leg). Both halves are stepped, or on a wall, where the leg was; of a
 * curved leg they go as far round together as it did. A
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
  const track = legTrack(site, line, whole);
  const { x, y } = entry(middle.site, 'marks', middle.mark);
  const along = nearestOnTrack({ x, y }, track).along;
  const split = withEntry(middle.site, 'lines', id, {
    ...line,
    path: withVertex(line.path, vertex, index),
    stepped:
      line.stepped[leg] === undefined ? line.stepped : { ...line.stepped, [vertex.id]: true },
    curved: bowsOf(line, { leg, next: vertex.id }, { track, along, at: { x, y } }),
    walls: wallsOf(line, { leg, next: vertex.id }, along / (trackLength(track) || 1)),
  });
  const parted = entry(split, 'lines', id);
  const halves = [leg, vertex.id].map((half) => ({
    leg: half,
    ground: legTrack(split, parted, legAt(parted, half)),
  }));
  return withAnchored(split, id, (thing) =>
    thing.leg === leg ? ontoHalf(thing, track, halves as [Half, Half]) : thing,
  );
};

interface Parting {
  readonly track: Ground;
  /** How far along it the mark is, inches, and where. */
  readonly along: number;
  readonly at: SitePoint;
}

type Parted = Pick<DrawnLeg, 'next'> & { readonly leg: VertexId };

const bowsOf = (
  { curved }: FenceLine,
  { leg, next }: Parted,
  { track, along, at }: Parting,
): FenceLine['curved'] => {
  if (curved[leg] === undefined) return curved;
  const bows = splitBows(track, along, [distance(track.start, at), distance(at, track.end)]);
  const rest = Object.entries(curved).filter(([other]) => other !== leg);
  const own = [leg, next].flatMap((half, n) => (bows[n] === 0 ? [] : [[half, bows[n]] as const]));
  return Object.fromEntries([...rest, ...own]) as FenceLine['curved'];
};

const wallsOf = (
  { walls }: FenceLine,
  { leg, next }: Parted,
  share: number,
): FenceLine['walls'] => {
  const wall = walls[leg];
  if (wall === undefined) return walls;
  const [first, second] = splitWall(wall, share);
  return { ...walls, [leg]: first, [next]: second };
};

type Ground = Track<'site'>;
type Half = { readonly leg: VertexId; readonly ground: Ground };

const ontoHalf = <Thing extends Anchored>(
  thing: Thing,
  whole: Ground,
  [first, second]: readonly [Half, Half],
): Thing => {
  const spot = anchoredAt(thing.anchor, whole);
  const offFirst = nearestOnTrack(spot, first.ground).off;
  const offSecond = nearestOnTrack(spot, second.ground).off;
  // one held at the very mark belongs to the half that it reaches into
  const bias = thing.anchor.from === 'start' ? slack : -slack;
  const half = offSecond < offFirst + bias ? second : first;
  return { ...thing, leg: half.leg, anchor: moveAnchor(thing.anchor, whole, half.ground) };
};
