import { checked } from '../site/checked.ts';
import { townRuleId, type TownRuleId } from '../site/ids.ts';
import { limits } from '../site/limits.ts';
import { soundTownRule } from '../site/soundTownRule.ts';
import { townRuleVersion, type TownRule } from '../site/townRule.ts';
import type { BookKind } from './bookKind.ts';
import { phrase } from '../phrases/phrase.ts';

/** The rules of towns that the company works in. */
export const townRuleKind: BookKind<TownRuleId, TownRule> = {
  called: phrase`book of town rules`,
  most: limits.townRules,
  checkedId: (id) => checked(townRuleId, id, ['book']) as TownRuleId,
  checkedEntry: (rule, where) => checked(soundTownRule, rule, where),
  field: 'rule',
  version: townRuleVersion,
};
