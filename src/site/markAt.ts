import type { SitePoint } from '../geometry/point.ts';
import { entry } from './entry.ts';
import type { MarkId } from './ids.ts';
import { nextId } from './nextId.ts';
import type { Site } from './site.ts';
import { withEntry } from './withEntries.ts';

/** A mark that there is already, or a point on the ground where one is to be. */
export type Place = MarkId | SitePoint;

/** The mark at a place, and the site that has it. RangeError for a mark that is not there. */
export const markAt = (
  site: Site,
  place: Place,
): { readonly site: Site; readonly mark: MarkId } => {
  if (typeof place === 'string') {
    entry(site, 'marks', place);
    return { site, mark: place };
  }
  const mark = nextId(site, 'mark');
  return {
    site: withEntry(site, 'marks', mark, { x: place.x, y: place.y, label: '', fixed: false }),
    mark,
  };
};
