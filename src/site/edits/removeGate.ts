import { entry } from '../entry.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Removes a gate; the fence closes where it was. RangeError for an unknown gate. */
export const removeGate = (site: Site, id: GateId): Site => {
  entry(site, 'gates', id);
  return withoutEntries(site, 'gates', [id]);
};
