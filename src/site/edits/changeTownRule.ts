import { checked } from '../checked.ts';
import { entry } from '../entry.ts';
import type { TownRuleId } from '../ids.ts';
import type { Site } from '../site.ts';
import { soundTownRule } from '../soundTownRule.ts';
import type { TownRule } from '../townRule.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Changes what a rule of a town says, limits in inches. RangeError for an unknown rule and for one that
 * would say nothing, as `townRuleFault` has it.
 */
export const changeTownRule = (site: Site, id: TownRuleId, fields: Partial<TownRule>): Site => {
  const rule = { ...entry(site, 'townRules', id), ...fields };
  return withEntry(site, 'townRules', id, checked(soundTownRule, rule, ['townRules', id]));
};
