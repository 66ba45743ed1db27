import type { ObservationId } from '../../site/ids.ts';
import { fitted } from './fitted.ts';
import type { Network } from './networks.ts';
import type { Places } from './rows.ts';
import { stanceAt, taskOf } from './stance.ts';

/** A network that fits what was observed as well as can be near to where its marks were. */
export interface Rest {
  /** With its marks where they stand then. */
  readonly network: Network;
  readonly places: Places;
  /** The sum of squares of what is off then, each over its sigma. */
  readonly cost: number;
  /** How many steps the sums took. */
  readonly steps: number;
}

/**
 * A network fitted on from where its marks are, without going back to any sketch: for what readings say
 * to each other, which is the same wherever a body stands. No more than so many `steps`, where these are told.
 */
export const refitted = (network: Network, steps?: number): Rest => {
  const task = taskOf(network);
  const start = stanceAt(task, new Float64Array(task.frame.size));
  const { stance, steps: taken } = fitted(task, start, { steps });
  const spots = new Map(
    [...network.spots].map(([id, spot]) => [id, { ...spot, ...stance.places.get(id) }] as const),
  );
  return { network: { ...network, spots }, places: stance.places, cost: stance.cost, steps: taken };
};

/** What is left of a network without one observation, fitted on; in so many steps at most. */
export const adjustedRest = (network: Network, without: ObservationId, steps: number): Rest =>
  refitted({ ...network, sightings: network.sightings.filter(({ id }) => id !== without) }, steps);
