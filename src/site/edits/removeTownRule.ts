import { entry } from '../entry.ts';
import type { TownRuleId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/** Takes a rule of a town off a site. RangeError for an unknown rule. */
export const removeTownRule = (site: Site, id: TownRuleId): Site => {
  entry(site, 'townRules', id);
  return withoutEntries(site, 'townRules', [id]);
};
