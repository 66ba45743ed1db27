import { checked } from '../checked.ts';
import { conditionsSchema, type Conditions } from '../conditions.ts';
import { kept } from '../kept.ts';
import type { Site } from '../site.ts';

/** Sets what the place does to a fence. RangeError for a frost, speed or word that cannot be. */
export const setConditions = (site: Site, fields: Partial<Conditions>): Site => {
  const value = checked(conditionsSchema, { ...site.conditions, ...fields }, ['conditions']);
  const conditions = kept(site.conditions, value);
  return conditions === site.conditions ? site : { ...site, conditions };
};
