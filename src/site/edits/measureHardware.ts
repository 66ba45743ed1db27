import type { Inches } from '../../units/inches.ts';
import { entry } from '../entry.ts';
import type { HardwareId } from '../ids.ts';
import { measuredPart } from '../measuredPart.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Puts down what was read off each part on order, in inches, and the day; what the part takes
 * follows from that as `measuredPart` says. RangeError for no reading and an unknown part.
 */
export const measureHardware = (
  site: Site,
  id: HardwareId,
  readings: readonly Inches[],
  on: string,
): Site => {
  const part = measuredPart(entry(site, 'hardware', id), readings, on);
  if (part === null) {
    throw new RangeError(phrase`hardware › ${id} › readings: expected at least one, found none`);
  }
  return withEntry(site, 'hardware', id, part);
};
