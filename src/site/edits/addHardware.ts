import { checked } from '../checked.ts';
import type { Hardware } from '../hardware.ts';
import { hardwareId } from '../ids.ts';
import type { HardwareId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Lets a site carry a hinge or latch under an id; a site that has something there keeps its own.
 * RangeError for a wrong id or field, and for low, planned and high out of order.
 */
export const addHardware = (site: Site, id: HardwareId, part: Hardware): Site => {
  if (Object.hasOwn(site.hardware, id)) return site;
  return withEntry(site, 'hardware', checked(hardwareId, id, ['hardware']), part);
};
