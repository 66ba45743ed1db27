import { entry } from '../entry.ts';
import type { HardwareId } from '../ids.ts';
import { partsInUse } from '../partsInUse.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Removes a hinge or latch that no gate has. RangeError for an unknown one and for one in use. */
export const removeHardware = (site: Site, id: HardwareId): Site => {
  entry(site, 'hardware', id);
  if (partsInUse(site).has(id)) {
    throw new RangeError(phrase`hardware: expected a part that no gate has, found ${quoted(id)}`);
  }
  return withoutEntries(site, 'hardware', [id]);
};
