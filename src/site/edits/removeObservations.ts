import { entry } from '../entry.ts';
import type { ObservationId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Takes observations out: the rest says where marks stand. RangeError for an unknown one. */
export const removeObservations = (site: Site, ids: readonly ObservationId[]): Site => {
  for (const id of ids) entry(site, 'observations', id);
  return withoutEntries(site, 'observations', ids);
};
