import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import type { Site } from '../site.ts';
import { workSchema, type Work } from '../work.ts';

/** Sets what makes the work more than setting fence. RangeError for a length or share that cannot be. */
export const setWork = (site: Site, fields: Partial<Work>): Site => {
  const value = checked(workSchema, { ...site.work, ...fields }, ['work']);
  const work = kept(site.work, value);
  return work === site.work ? site : { ...site, work };
};
