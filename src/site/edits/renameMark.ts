import { entry } from '../entry.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Gives a mark another label. RangeError for an unknown mark or a label of over 200 characters. */
export const renameMark = (site: Site, id: MarkId, label: string): Site =>
  withEntry(site, 'marks', id, { ...entry(site, 'marks', id), label });
