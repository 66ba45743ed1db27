import { checked } from '../checked.ts';
import { townRuleId, type TownRuleId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { soundTownRule } from '../soundTownRule.ts';
import type { TownRule } from '../townRule.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Adds a rule of a town, limits in inches, under an id; a site that has a rule there keeps its own.
 * RangeError for a rule that says nothing, as `townRuleFault` has it.
 */
export const addTownRule = (
  site: Site,
  rule: TownRule,
  id: TownRuleId = nextId(site, 'town-rule'),
): Site => {
  if (Object.hasOwn(site.townRules, id)) return site;
  const name = checked(townRuleId, id, ['townRules']);
  return withEntry(site, 'townRules', name, checked(soundTownRule, rule, ['townRules', id]));
};
