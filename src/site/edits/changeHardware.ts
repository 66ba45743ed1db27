import { entry } from '../entry.ts';
import type { Hardware } from '../hardware.ts';
import type { HardwareId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Changes what is known of a hinge or latch, lengths in inches; its kind stays. RangeError for an
 * unknown part, and for low, planned and high out of order.
 */
export const changeHardware = (
  site: Site,
  id: HardwareId,
  fields: Partial<Omit<Hardware, 'kind'>>,
): Site => withEntry(site, 'hardware', id, { ...entry(site, 'hardware', id), ...fields });
