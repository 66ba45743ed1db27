import type { TownRuleId } from '../../site/ids.ts';
import { sameTown } from '../../site/sameTown.ts';
import { townMeasures, type TownRule } from '../../site/townRule.ts';
import type { TownRules } from '../../site/townRules.ts';

/** One rule with its id. */
export type RuleEntry = readonly [id: TownRuleId, rule: TownRule];

/** The rules of one town, what is measured before what is said in words. */
export interface TownGroup {
  readonly town: string;
  readonly rules: readonly RuleEntry[];
}

const rank = ({ measure }: TownRule): number =>
  measure === null ? townMeasures.length : townMeasures.indexOf(measure);

const inTurn = ([a, one]: RuleEntry, [b, other]: RuleEntry): number =>
  rank(one) - rank(other) || (a < b ? -1 : 1);

/** Rules by their towns, in the order of the alphabet; names that `sameTown` takes for one are one. */
export const rulesByTown = (rules: TownRules): readonly TownGroup[] => {
  const groups: { town: string; rules: RuleEntry[] }[] = [];
  for (const entry of (Object.entries(rules) as [TownRuleId, TownRule][]).toSorted(inTurn)) {
    const [, { town }] = entry;
    const known = groups.find((group) => sameTown(group.town, town));
    if (known === undefined) groups.push({ town, rules: [entry] });
    else known.rules.push(entry);
  }
  return groups.toSorted((a, b) => a.town.localeCompare(b.town));
};
