import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import { siteSchema } from '../site.ts';
import type { Site } from '../site.ts';

/** Sets how lengths are written on this site; no length changes. RangeError for another style. */
export const setLengths = (site: Site, fields: Partial<Site['lengths']>): Site => {
  const style = { ...site.lengths, ...fields };
  const lengths = kept(site.lengths, checked(siteSchema.shape.lengths, style, ['lengths']));
  return lengths === site.lengths ? site : { ...site, lengths };
};
