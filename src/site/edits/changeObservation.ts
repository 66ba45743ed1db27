import { entry } from '../entry.ts';
import type { ObservationId } from '../ids.ts';
import type { Observation } from '../observation.ts';
import type { Site } from '../site.ts';
import { withObservation } from '../withObservation.ts';

type SomeOf<T> = T extends unknown ? Partial<Omit<T, 'kind'>> : never;

/** Fields of an observation of one kind that can be changed. */
export type ObservationChange = SomeOf<Observation>;

/**
 * Changes what was observed: what was read, how far it is trusted, what it is called. RangeError for
 * an unknown observation and for a value or mark that it cannot have.
 */
export const changeObservation = (
  site: Site,
  id: ObservationId,
  change: ObservationChange,
): Site => {
  const seen = { ...entry(site, 'observations', id), ...change } as Observation;
  return withObservation(site, id, seen);
};
