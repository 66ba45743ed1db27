import type { SitePoint } from '../../geometry/point.ts';
import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Moves a mark to a point, with all that stands on it and what follows that. RangeError for an unknown mark or beyond ten miles.
 */
export const moveMark = (site: Site, id: MarkId, to: SitePoint): Site =>
  followed(withEntry(site, 'marks', id, { ...entry(site, 'marks', id), x: to.x, y: to.y }), [id]);
