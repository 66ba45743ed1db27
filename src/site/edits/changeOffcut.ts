import { entry } from '../entry.ts';
import type { OffcutId } from '../ids.ts';
import type { Offcut } from '../offcut.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Changes what is said of lengths that lie in the yard: what they are of, how long in inches, how many.
 * RangeError for unknown ones, and for what cannot be added.
 */
export const changeOffcut = (site: Site, id: OffcutId, fields: Partial<Offcut>): Site =>
  withEntry(site, 'offcuts', id, { ...entry(site, 'offcuts', id), ...fields });
