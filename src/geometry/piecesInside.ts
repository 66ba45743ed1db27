import { boundsOf, boundsOverlap, expandBounds } from './bounds.ts';
import { contains } from './contains.ts';
import { distance } from './distance.ts';
import { lerp } from './lerp.ts';
import { nearestOnSegment } from './nearestOnSegment.ts';
import { edges, type Polygon } from './polygon.ts';
import type { Segment } from './segment.ts';
import { segmentIntersection } from './segmentIntersection.ts';
import { slack } from './tolerance.ts';
import type { Piece } from './throughCapsule.ts';

/** Where a segment may pass from inside to outside: as shares of it, rising, with its ends. */
const sharesOf = (segment: Segment<string>, polygon: Polygon<string>): number[] => {
  const crossed = edges(polygon).flatMap(
    (edge) => segmentIntersection(segment, edge)?.alongFirst ?? [],
  );
  // an edge that the segment lies on has no crossing with it, but its ends are on the segment
  const touched = polygon.flatMap((corner) => {
    const near = nearestOnSegment(corner, segment);
    return near.distance <= slack ? [near.along] : [];
  });
  return [0, ...crossed, ...touched, 1].toSorted((a, b) => a - b);
};

/**
 * The pieces of a segment that lie in a polygon, by the even-odd rule, rising from its start and apart
 * from each other, in the unit of the space. The edge of the polygon, give or take rounding, is inside; a
 * segment that only touches it at a point has none.
 */
export const piecesInside = <Space extends string>(
  segment: Segment<Space>,
  polygon: Polygon<NoInfer<Space>>,
): Piece[] => {
  const [box, ground] = [boundsOf([segment.start, segment.end]), boundsOf(polygon)];
  if (polygon.length < 3 || box === null || ground === null) return [];
  if (!boundsOverlap(expandBounds(box, slack), ground)) return [];
  const length = distance(segment.start, segment.end);
  const shares = sharesOf(segment, polygon);
  const pieces: Piece[] = [];
  shares.slice(1).forEach((end, n) => {
    const start = shares[n] ?? 0;
    if ((end - start) * length <= slack) return;
    if (!contains(polygon, lerp(segment.start, segment.end, (start + end) / 2))) return;
    const [from, to] = [start * length, end * length];
    const last = pieces.at(-1);
    if (last === undefined || from > last.to + slack) pieces.push({ from, to });
    else pieces.splice(-1, 1, { from: last.from, to });
  });
  return pieces;
};
