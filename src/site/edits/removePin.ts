import { entry } from '../entry.ts';
import type { PinId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Lets go of a pin: its stretch is divided as if it had never been. RangeError for an unknown pin. */
export const removePin = (site: Site, id: PinId): Site => {
  entry(site, 'pins', id);
  return withoutEntries(site, 'pins', [id]);
};
