import { boundsOf } from '../../geometry/bounds.ts';
import type { Network } from './networks.ts';

/** The least extent of a network, inches: no yard is smaller than a foot. Ours. */
const leastReach = 12;

/** A rough place counts as reaching so many of its standard deviations. Ours. */
const fixReach = 30;

/**
 * How far a network reaches, in inches: the diagonal of its sketch and its rough places, or its longest
 * tape or offset where that is more. A mark of which no more is known than that is not known at all.
 */
export const reachOf = ({ spots, sightings }: Network): number => {
  const fixes = sightings.flatMap(({ seen }) => (seen.kind === 'fix' ? [seen] : []));
  const box = boundsOf([...spots.values(), ...fixes]);
  const drawn = box === null ? 0 : Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  const read = sightings.map(({ seen }) => {
    if (seen.kind === 'tape') return seen.length;
    if (seen.kind === 'fix') return fixReach * seen.accuracy;
    return seen.kind === 'offset' ? Math.abs(seen.distance) : 0;
  });
  return read.reduce((most, length) => Math.max(most, length), Math.max(leastReach, drawn));
};
