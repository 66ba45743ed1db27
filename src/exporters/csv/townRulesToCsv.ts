import type { TownRule } from '../../site/townRule.ts';
import type { TownRules } from '../../site/townRules.ts';
import { keyColumn } from './bookColumns.ts';
import { townRuleColumns } from './townRuleColumns.ts';
import { writeCsv } from './writeCsv.ts';

const order = ([id, { town, measure }]: readonly [string, TownRule]): string =>
  [town, measure ?? '', id].join('\u0000');

/**
 * The rules of towns as comma-separated text: a header, then a row for each rule, by town and measure.
 * Limits are written as on a tape. `townRulesFromCsv` reads it back as it was.
 */
export const townRulesToCsv = (book: TownRules): string => {
  const rows = Object.entries<TownRule>(book)
    .toSorted((a, b) => (order(a) < order(b) ? -1 : 1))
    .map(([id, rule]) => [
      ...townRuleColumns.map(({ write }) => write(rule)),
      id.slice(id.indexOf(':') + 1),
    ]);
  return writeCsv([[...townRuleColumns.map(({ name }) => name), keyColumn], ...rows]);
};
