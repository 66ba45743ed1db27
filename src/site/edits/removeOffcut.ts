import { entry } from '../entry.ts';
import type { OffcutId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Takes lengths off what lies in the yard. RangeError for unknown ones. */
export const removeOffcut = (site: Site, id: OffcutId): Site => {
  entry(site, 'offcuts', id);
  return withoutEntries(site, 'offcuts', [id]);
};
