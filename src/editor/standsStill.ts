import { distance } from '../geometry/distance.ts';
import { sameSpot } from '../geometry/sameSpot.ts';
import type { Pointer } from './pointer.ts';
import type { Snap } from './snap.ts';
import type { Stand } from './stand.ts';

/**
 * Whether a press is where the last point of a chain is already: a tap twice is no piece of an
 * inch. With snapping off or a length typed, only the very spot is.
 */
export const standsStill = (
  here: Stand | undefined,
  found: Snap,
  pointer: NonNullable<Pointer>,
): boolean => {
  if (here === undefined) return false;
  if (sameSpot(here.point, found.point)) return true;
  if (pointer.free || found.kind === 'typed') return false;
  return distance(here.point, pointer.at) <= pointer.reach;
};
