import { boundsOf } from '../../geometry/bounds.ts';
import type { Network } from './networks.ts';

/** The least extent of a network, inches: no yard is smaller than a foot. Ours. */
const leastReach = 12;

/**
 * How far a network reaches, in inches: the diagonal of its sketch, or its longest tape where the sketch
 * is smaller. A mark of which no more is known than that is not known at all.
 */
export const reachOf = ({ spots, sightings }: Network): number => {
  const box = boundsOf([...spots.values()]);
  const drawn = box === null ? 0 : Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  const taped = sightings.map(({ seen }) => (seen.kind === 'tape' ? seen.length : 0));
  return Math.max(leastReach, drawn, ...taped);
};
