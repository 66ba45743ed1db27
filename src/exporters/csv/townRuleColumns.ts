import type { TownRule } from '../../site/townRule.ts';
import { exactText } from './exactText.ts';

/** What the file of the rules of towns has of each rule, column by column, and how it is written. */
export const townRuleColumns = [
  { name: 'Town', write: ({ town }: TownRule) => town },
  { name: 'Measure', write: ({ measure }: TownRule) => measure ?? '' },
  { name: 'Limit', write: ({ limit }: TownRule) => (limit === null ? '' : exactText(limit)) },
  { name: 'Words', write: ({ words }: TownRule) => words },
  { name: 'Source', write: ({ source }: TownRule) => source },
] as const;

export type TownRuleColumn = (typeof townRuleColumns)[number]['name'] | 'Key';
