import type { ObservationId } from '../../site/ids.ts';
import { refitted } from './refitted.ts';
import type { Network } from './networks.ts';
import { stanceAt, taskOf } from './stance.ts';

/** After so many rounds of so few steps the wrong readings stand out. Ours. */
const [rounds, stepsEach] = [8, 2];

/** How many steps of the sums it takes to stand marks so. */
export const resistantSteps = rounds * stepsEach;

/** The network with its marks where they stand by readings of these sigmas. */
const standing = (network: Network, sigmas: readonly number[]): Network => {
  const sightings = network.sightings.map((one, n) => ({ ...one, sigma: sigmas[n] ?? one.sigma }));
  return { ...network, spots: refitted({ ...network, sightings }, stepsEach).network.spots };
};

/** What each observation is off by, over its sigma, without its sign; of a fix the larger of two. */
const offsIn = (network: Network): number[] => {
  const task = taskOf(network);
  const { rows } = stanceAt(task, new Float64Array(task.frame.size));
  const offs = new Map<ObservationId, number>(network.sightings.map(({ id }) => [id, 0]));
  for (const { sighting, off } of rows) {
    offs.set(sighting.id, Math.max(offs.get(sighting.id) ?? 0, Math.abs(off)));
  }
  return [...offs.values()];
};

/**
 * The network with its marks where the readings leave least between them by their absolute residuals
 * instead of their squares, and what each of them is off by there, over its sigma. One wrong reading
 * bends that hardly at all. By least squares again and again, with less and less trust in what is off:
 * iteratively reweighted least squares, from memory.
 */
export const resistant = (
  network: Network,
): { readonly network: Network; readonly offs: readonly number[] } => {
  let now = network;
  let offs = offsIn(now);
  for (let round = 0; round < rounds; round += 1) {
    now = standing(
      now,
      network.sightings.map(({ sigma }, n) => sigma * Math.sqrt(Math.max(1, offs[n] ?? 1))),
    );
    offs = offsIn(now);
  }
  return { network: now, offs };
};
