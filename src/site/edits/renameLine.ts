import { entry } from '../entry.ts';
import type { LineId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Gives a line another label. RangeError for an unknown line or a label of over 200 characters. */
export const renameLine = (site: Site, id: LineId, label: string): Site =>
  withEntry(site, 'lines', id, { ...entry(site, 'lines', id), label });
