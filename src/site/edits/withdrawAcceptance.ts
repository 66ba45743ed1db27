import { entry } from '../entry.ts';
import type { AcceptanceId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Takes an acceptance back: its flag stands as before. RangeError for one that is not there. */
export const withdrawAcceptance = (site: Site, id: AcceptanceId): Site => {
  entry(site, 'acceptances', id);
  return withoutEntries(site, 'acceptances', [id]);
};
