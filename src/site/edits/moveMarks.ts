import type { SitePoint } from '../../geometry/point.ts';
import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import { keptBends } from '../keptBends.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/**
 * Moves several marks by one vector in inches, a mark named twice once only; what follows them
 * goes along, and curved legs go round by the angle that they did. RangeError for an
 * unknown mark and for a move beyond ten miles; then none has moved.
 */
export const moveMarks = (site: Site, ids: readonly MarkId[], by: SitePoint): Site => {
  const moved = [...new Set(ids)].map((id) => {
    const mark = entry(site, 'marks', id);
    return [id, { ...mark, x: mark.x + by.x, y: mark.y + by.y }] as const;
  });
  return keptBends(site, followed(withEntries(site, 'marks', Object.fromEntries(moved)), ids));
};
