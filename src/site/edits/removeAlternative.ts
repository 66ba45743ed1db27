import { entry } from '../entry.ts';
import type { AlternativeId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Takes an alternative off a site; the builds that it names stay. RangeError for an unknown one. */
export const removeAlternative = (site: Site, id: AlternativeId): Site => {
  entry(site, 'alternatives', id);
  return withoutEntries(site, 'alternatives', [id]);
};
