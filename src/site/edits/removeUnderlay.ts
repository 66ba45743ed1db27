import { entry } from '../entry.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';
import { withoutUnusedPicture } from '../withoutUnusedPicture.ts';

/**
 * Takes a picture from under the drawing, locked or not, and out of the file once no other shows it.
 * RangeError for an unknown one.
 */
export const removeUnderlay = (site: Site, id: UnderlayId): Site => {
  const { picture } = entry(site, 'underlays', id);
  return withoutUnusedPicture(withoutEntries(site, 'underlays', [id]), picture);
};
