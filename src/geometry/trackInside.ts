import { distance } from './distance.ts';
import { piecesInside } from './piecesInside.ts';
import type { Polygon } from './polygon.ts';
import type { Piece } from './throughCapsule.ts';
import { slack } from './tolerance.ts';
import { trackLength, trackPoints, type Track } from './track.ts';

/** How far straight pieces may lie inside an arc that they stand for, in the unit of the space. */
const off = 1 / 128;

/**
 * The pieces of a track that lie in a polygon, as `piecesInside` has them of a segment, by lengths along
 * it. An arc is taken as straight pieces that lie at most 1/128 inside of it.
 */
export const trackInside = <Space extends string>(
  track: Track<Space>,
  polygon: Polygon<NoInfer<Space>>,
): Piece[] => {
  if (track.bow === 0) return piecesInside(track, polygon);
  const points = trackPoints(track, off);
  const step = trackLength(track) / (points.length - 1);
  const pieces: Piece[] = [];
  points.slice(1).forEach((end, n) => {
    const chord = { start: points[n] ?? end, end };
    const pace = step / distance(chord.start, chord.end);
    for (const piece of piecesInside(chord, polygon)) {
      const [from, to] = [n * step + piece.from * pace, n * step + piece.to * pace];
      const last = pieces.at(-1);
      if (last === undefined || from > last.to + slack) pieces.push({ from, to });
      else pieces.splice(-1, 1, { from: last.from, to });
    }
  });
  return pieces;
};
