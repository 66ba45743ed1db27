import type { TownRuleId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import { sameTown } from '../sameTown.ts';
import { sameTownRule } from '../sameTownRule.ts';
import type { Site } from '../site.ts';
import type { TownRule } from '../townRule.ts';
import type { TownRules } from '../townRules.ts';
import { addTownRule } from './addTownRule.ts';

/**
 * Takes the rules of a town from a book onto a site under the ids that they have there. A site that has
 * a rule under an id keeps its own, and so does one that has another that asks the same. RangeError for
 * a town of which the book has no rule.
 */
export const takeTownRules = (site: Site, book: TownRules, town: string): Site => {
  const own = (Object.entries(book) as [TownRuleId, TownRule][]).filter(([, rule]) =>
    sameTown(rule.town, town),
  );
  if (own.length === 0) {
    throw new RangeError(`townRules: expected a town of the book, found ${quoted(town)}`);
  }
  return own.reduce((so, [id, rule]) => {
    const asked = Object.values<TownRule>(so.townRules).some((one) => sameTownRule(one, rule));
    return asked ? so : addTownRule(so, rule, id);
  }, site);
};
