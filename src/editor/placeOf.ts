import type { Place } from '../site/markAt.ts';
import type { Site } from '../site/site.ts';
import { footingIn } from './ground.ts';
import type { Stand } from './stand.ts';

/**
 * The place of a chosen point for an edit: the mark that lies there now, if the point was meant to
 * stand on something, else the point. The site may have changed since it was chosen.
 */
export const placeOf = (site: Site, { point, on }: Stand): Place => {
  if (on === null) return point;
  const footing = footingIn({ site, except: [] }, point);
  return footing?.kind === 'mark' ? footing.id : point;
};
