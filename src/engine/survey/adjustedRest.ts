import type { ObservationId } from '../../site/ids.ts';
import { adjusted } from './adjusted.ts';
import type { Network } from './networks.ts';
import type { Places } from './rows.ts';
import { stanceAt, taskOf } from './stance.ts';

/** What is left of a network without one observation, adjusted. */
export interface Rest {
  /** With its marks where they stand then. */
  readonly network: Network;
  readonly places: Places;
  /** The sum of squares of what is off then, each over its sigma. */
  readonly cost: number;
}

/** A network without an observation, or whole, adjusted from where its marks are. */
export const adjustedRest = (network: Network, without: ObservationId | null): Rest => {
  const sightings = network.sightings.filter(({ id }) => id !== without);
  const { places } = adjusted({ ...network, sightings });
  const spots = new Map(
    [...network.spots].map(([id, spot]) => [id, { ...spot, ...places.get(id) }] as const),
  );
  const rest = { spots, sightings };
  const task = taskOf(rest);
  const { cost } = stanceAt(task, new Float64Array(task.frame.later.length));
  return { network: rest, places, cost };
};
