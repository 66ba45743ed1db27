import { checked } from '../checked.ts';
import { countingSchema, type Counting } from '../counting.ts';
import { kept } from '../kept.ts';
import type { Site } from '../site.ts';

/** Sets how things are counted, cut and sold. RangeError for a spacing, length or share that cannot be. */
export const setCounting = (site: Site, fields: Partial<Counting>): Site => {
  const value = checked(countingSchema, { ...site.counting, ...fields }, ['counting']);
  const counting = kept(site.counting, value);
  return counting === site.counting ? site : { ...site, counting };
};
