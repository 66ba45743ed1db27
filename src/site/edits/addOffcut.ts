import { nextId } from '../nextId.ts';
import type { Offcut } from '../offcut.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Adds lengths that lie in the yard, in inches, under `nextId(site, 'offcut')`. RangeError for a length of 0
 * or less, for a count that is no whole number from 1 to 1000, and for one entry too many.
 */
export const addOffcut = (site: Site, offcut: Offcut): Site =>
  withEntry(site, 'offcuts', nextId(site, 'offcut'), offcut);
