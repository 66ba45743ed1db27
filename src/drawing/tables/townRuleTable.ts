import { townRuleText } from '../../engine/checks/townRuleText.ts';
import type { Site } from '../../site/site.ts';
import type { TownRule } from '../../site/townRule.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Town`, align: 'left', share: 0.3 },
  { heading: phrase`Asks`, align: 'left', share: 1 },
  { heading: phrase`Where it says so`, align: 'left', share: 0.5 },
];

/** A row that is longer would be higher than a page of small paper; characters. Ours. */
const mostInRow = 500;

/** Text in parts that each have room in a row, parted at blanks where there are any. */
const partsOf = (text: string): readonly string[] =>
  text.match(new RegExp(`.{1,${mostInRow}}(?:\\s|$)|.{${mostInRow}}`, 'g')) ?? [text];

/** The rules of towns that a site carries, by town; each town is named in its first row. */
export const townRuleTable = ({ townRules, lengths }: Site): Table => {
  const rules = Object.values<TownRule>(townRules).toSorted((a, b) =>
    a.town.localeCompare(b.town, 'en'),
  );
  const rows = rules.flatMap((rule, n) => {
    const { asks, source } = townRuleText(rule, lengths);
    const town = rules[n - 1]?.town === rule.town ? '' : rule.town;
    return partsOf(asks).map((part, m) =>
      m === 0 ? [town, part.trim(), source] : ['', part.trim(), ''],
    );
  });
  return { title: phrase`Rules of towns`, columns, rows };
};
