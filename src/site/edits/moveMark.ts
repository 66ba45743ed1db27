import type { SitePoint } from '../../geometry/point.ts';
import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import { keptBends } from '../keptBends.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Moves a mark to a point, with all that stands on it and what follows that; curved legs go round by
 * the angle that they did. RangeError for an unknown mark or beyond ten miles.
 */
export const moveMark = (site: Site, id: MarkId, to: SitePoint): Site => {
  const mark = { ...entry(site, 'marks', id), x: to.x, y: to.y };
  return keptBends(site, followed(withEntry(site, 'marks', id, mark), [id]));
};
