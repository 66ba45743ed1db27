import type { TownRuleId } from './ids.ts';
import { sameTown } from './sameTown.ts';
import { sameTownRule } from './sameTownRule.ts';
import type { Site } from './site.ts';
import type { TownRule } from './townRule.ts';
import type { TownRules } from './townRules.ts';

/**
 * The rules of a town that a book has and a site lacks, each once: none under an id that the site has, and
 * none that asks the same as one that it has.
 */
export const townRulesToTake = (
  { townRules }: Pick<Site, 'townRules'>,
  book: TownRules,
  town: string,
): TownRules => {
  const asked = Object.values<TownRule>(townRules);
  const taken: [TownRuleId, TownRule][] = [];
  for (const [id, rule] of Object.entries(book) as [TownRuleId, TownRule][]) {
    if (!sameTown(rule.town, town) || Object.hasOwn(townRules, id)) continue;
    if (asked.some((one) => sameTownRule(one, rule))) continue;
    asked.push(rule);
    taken.push([id, rule]);
  }
  return Object.fromEntries(taken);
};
