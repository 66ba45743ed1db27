import { boundsOf, boundsOverlap, expandBounds } from '../../geometry/bounds.ts';
import { contains } from '../../geometry/contains.ts';
import { cross } from '../../geometry/cross.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { segmentIntersection } from '../../geometry/segmentIntersection.ts';
import type { Segment } from '../../geometry/segment.ts';
import { throughCapsule, type Piece } from '../../geometry/throughCapsule.ts';
import { trackLength, trackPoints, type Track } from '../../geometry/track.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import type { KeepOut } from './keepOut.ts';

type Leg = Segment<'site'>;

/**
 * A fence along the edge of paving stands on it or beside it all the way: only an edge that it
 * passes at more than 30 degrees is one to step aside for. Ours, no published source.
 */
const passing = Math.sin(Math.PI / 6);

const passes = (leg: Leg, edge: Leg): boolean => {
  const [a, b] = [unitVector(leg.start, leg.end), unitVector(edge.start, edge.end)];
  return a !== null && b !== null && Math.abs(cross(a, b)) > passing;
};

/** The pieces of a leg inside a ring. */
const insideRing = (leg: Leg, ring: KeepOut['ring'], edges: readonly Leg[]): Piece[] => {
  if (ring === null || ring.length < 3) return [];
  const length = distance(leg.start, leg.end);
  const cuts = edges.flatMap((edge) => segmentIntersection(leg, edge)?.alongFirst ?? []);
  const shares = [0, ...cuts, 1].toSorted((a, b) => a - b);
  return shares.slice(1).flatMap((end, n) => {
    const start = shares[n] ?? 0;
    const middle = lerp(leg.start, leg.end, (start + end) / 2);
    return start < end && contains(ring, middle)
      ? [{ from: start * length, to: end * length }]
      : [];
  });
};

/** As `closedOn`, on a straight leg. */
const closedOnStraight = (keepOut: KeepOut, leg: Leg, holeRadius: number): readonly Piece[] => {
  const { kind, edges, radius, ring, bounds } = keepOut;
  const box = boundsOf([leg.start, leg.end]);
  if (box === null || !boundsOverlap(expandBounds(box, holeRadius), bounds)) return [];
  const length = distance(leg.start, leg.end);
  const own = kind === 'joint' ? edges.filter((edge) => passes(leg, edge)) : edges;
  return [
    ...own.flatMap((edge) => throughCapsule(leg, edge, radius + holeRadius) ?? []),
    ...insideRing(leg, ring, edges),
  ].flatMap(({ from, to }) => {
    const piece = { from: Math.max(0, from), to: Math.min(length, to) };
    return piece.from < piece.to ? [piece] : [];
  });
};

/** How far straight pieces may lie inside a curved leg that they stand for, inches; holes are as much wider. */
const off = 1 / 128;

const closedOnCurve = (keepOut: KeepOut, leg: Track<'site'>, holeRadius: number): Piece[] => {
  const points = trackPoints(leg, off);
  const step = trackLength(leg) / (points.length - 1);
  return points.slice(1).flatMap((end, n) => {
    const piece = { start: points[n] ?? end, end };
    const pace = step / distance(piece.start, piece.end);
    return closedOnStraight(keepOut, piece, holeRadius + off).map(({ from, to }) => ({
      from: n * step + from * pace,
      to: n * step + to * pace,
    }));
  });
};

/**
 * The pieces of a leg on which a hole of a radius (inches) would lie in a keep-out: where its
 * centre may not be. Told in inches along the leg from its start, within the leg, in no order; a hole
 * that only touches is outside. On a curved leg a hole counts as up to 1/64 in wider.
 */
export const closedOn = (
  keepOut: KeepOut,
  leg: Track<'site'>,
  holeRadius: number,
): readonly Piece[] =>
  leg.bow === 0
    ? closedOnStraight(keepOut, leg, holeRadius)
    : closedOnCurve(keepOut, leg, holeRadius);
