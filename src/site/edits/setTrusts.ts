import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import { siteSchema } from '../site.ts';
import type { Site } from '../site.ts';

/** Sets how far readings are trusted of which nobody said more. RangeError for zero or less. */
export const setTrusts = (site: Site, fields: Partial<Site['trusts']>): Site => {
  const value = checked(siteSchema.shape.trusts, { ...site.trusts, ...fields }, ['trusts']);
  const trusts = kept(site.trusts, value);
  return trusts === site.trusts ? site : { ...site, trusts };
};
