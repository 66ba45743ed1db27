import { contains } from '../../geometry/contains.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { KeepOut } from './keepOut.ts';

/**
 * How far a hole of a radius reaches into a keep-out, inches: what it would have to move straight
 * out by. Zero or below where it is clear, by how much.
 */
export const reachInto = (
  { edges, radius, ring }: Pick<KeepOut, 'edges' | 'radius' | 'ring'>,
  at: SitePoint,
  holeRadius: number,
): number => {
  const off = Math.min(...edges.map((edge) => nearestOnSegment(at, edge).distance));
  const inside = ring !== null && ring.length > 2 && contains(ring, at);
  return radius + holeRadius + (inside ? off : -off);
};
