import { frameOf, type Frame } from './frame.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Network } from './networks.ts';

/** So many multiplications, row by row, nobody waits for: half a second at most. Ours. */
const patience = 1e8;

/** How many entries of the triangle a row goes through that begins at each column. */
const waysDown = ({ size, fill: { starts, columns } }: Frame): Float64Array => {
  const ways = new Float64Array(size);
  for (let column = size - 1; column >= 0; column -= 1) {
    const long = starts[column + 1]! - starts[column]!;
    ways[column] = long + (long === 1 ? 0 : ways[columns[starts[column]! + 1]!]!);
  }
  return ways;
};

/**
 * How many steps of the sums of a network are worth the wait, so that a crowd of wrong readings in a
 * large one cannot hold up the pad: one or more, by what its rows fill of its triangle.
 */
export const stepsWorth = (network: Network): number => {
  const frame = frameOf(network);
  const ways = waysDown(frame);
  const effort = network.sightings.reduce((sum, { seen }) => {
    const columns = Object.values(marksObserved(seen)).flatMap((id) => frame.columns.get(id) ?? []);
    return columns.length === 0 ? sum : sum + ways[Math.min(...columns)]!;
  }, 0);
  return Math.max(1, Math.floor(patience / Math.max(1, effort)));
};
