import type { ObservationId } from './ids.ts';
import type { Observation } from './observation.ts';
import { brokenObservation } from './references.ts';
import type { Site } from './site.ts';
import { withEntry } from './withEntries.ts';

/**
 * A site with an observation added or exchanged. RangeError with one line when it does not fit the
 * document, names a mark that is not there, or one mark twice.
 */
export const withObservation = (site: Site, id: ObservationId, seen: Observation): Site => {
  const changed = withEntry(site, 'observations', id, seen);
  const broken = changed === site ? null : brokenObservation(site, id, seen);
  if (broken !== null) throw new RangeError(broken);
  return changed;
};
