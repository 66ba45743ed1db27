import { entry } from '../entry.ts';
import type { ShotId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Removes grade shots. RangeError for an unknown shot. */
export const removeShots = (site: Site, ids: readonly ShotId[]): Site => {
  for (const id of ids) entry(site, 'shots', id);
  return withoutEntries(site, 'shots', ids);
};
