import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import { siteSchema } from '../site.ts';
import type { Site } from '../site.ts';

/** Says where on earth 0, 0 of the site is; null for nowhere. RangeError for a place that is none. */
export const setOrigin = (site: Site, place: Site['origin']): Site => {
  const origin = kept(site.origin, checked(siteSchema.shape.origin, place, ['origin']));
  return origin === site.origin ? site : { ...site, origin };
};
