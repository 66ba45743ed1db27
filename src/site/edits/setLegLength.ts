import { distance } from '../../geometry/distance.ts';
import { scale } from '../../geometry/scale.ts';
import { trackLength } from '../../geometry/track.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { checked } from '../checked.ts';
import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { LineId, MarkId, VertexId } from '../ids.ts';
import { legAt } from '../legGround.ts';
import { legTrack } from '../legTrack.ts';
import type { DrawnLeg } from '../legsOf.ts';
import { marksOfFeatures } from '../marksInUse.ts';
import { verticesOf } from '../pathOrder.ts';
import { positiveLength } from '../quantities.ts';
import type { Site } from '../site.ts';
import { moveMarks } from './moveMarks.ts';
import { setTape } from './setTape.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Gives a leg a length in inches, along the bearing that it has. The length of a curved leg is that
 * along the curve: it goes round by the angle that it did, on another radius. Its far mark moves, and on an
 * open line every mark after that one, up to the first that a house or another feature stands on:
 * walls do not move because a fence was measured. The length of a straight leg is what the tape reads
 * between its marks from then on. RangeError for an unknown line or leg, a length
 * of zero or less, and a leg whose marks are on one spot.
 */
export const setLegLength = (site: Site, id: LineId, leg: VertexId, length: number): Site => {
  const line = entry(site, 'lines', id);
  const drawn = legAt(line, leg);
  const wanted = checked(positiveLength, length, ['lines', id, 'leg', leg, 'length']);
  const track = legTrack(site, line, drawn);
  const way = unitVector(track.start, track.end);
  if (way === null) {
    throw new RangeError(
      phrase`lines › ${id} › leg › ${leg}: expected two marks apart, found one spot`,
    );
  }
  const chord = distance(track.start, track.end);
  const by = scale(
    way,
    track.bow === 0 ? wanted - chord : chord * (wanted / trackLength(track) - 1),
  );
  const moved = moveMarks(site, movingMarks(site, line, drawn), by);
  return track.bow === 0 ? setTape(moved, drawn.start, drawn.end, wanted) : moved;
};

const movingMarks = (site: Site, line: FenceLine, leg: DrawnLeg): MarkId[] => {
  const features = marksOfFeatures(site);
  if (line.closed || features.has(leg.end)) return [leg.end];
  const marks = verticesOf(line.path).map((vertex) => vertex.mark);
  const at = verticesOf(line.path).findIndex((vertex) => vertex.id === leg.next);
  const held = new Set([...features, ...marks.slice(0, at)]);
  const after = marks.slice(at + 1);
  const stop = after.findIndex((mark) => held.has(mark));
  return [leg.end, ...(stop === -1 ? after : after.slice(0, stop))];
};
