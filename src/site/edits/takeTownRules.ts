import type { TownRuleId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import { sameTown } from '../sameTown.ts';
import type { Site } from '../site.ts';
import type { TownRule } from '../townRule.ts';
import type { TownRules } from '../townRules.ts';
import { townRulesToTake } from '../townRulesToTake.ts';
import { addTownRule } from './addTownRule.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Takes the rules of a town from a book onto a site under the ids that they have there. A site that has
 * a rule under an id keeps its own, and so does one that has another that asks the same. RangeError for
 * a town of which the book has no rule, and for more rules than a site holds.
 */
export const takeTownRules = (site: Site, book: TownRules, town: string): Site => {
  if (!Object.values<TownRule>(book).some((rule) => sameTown(rule.town, town))) {
    throw new RangeError(phrase`townRules: expected a town of the book, found ${quoted(town)}`);
  }
  const fresh = Object.entries(townRulesToTake(site, book, town)) as [TownRuleId, TownRule][];
  return fresh.reduce((so, [id, rule]) => addTownRule(so, rule, id), site);
};
