import { keyColumn } from '../../exporters/csv/bookColumns.ts';
import { townRuleColumns, type TownRuleColumn } from '../../exporters/csv/townRuleColumns.ts';
import { townRuleId, type TownRuleId } from '../../site/ids.ts';
import { issueLine } from '../../site/issueLine.ts';
import { sameTown } from '../../site/sameTown.ts';
import { soundTownRule } from '../../site/soundTownRule.ts';
import { townMeasures, type TownRule } from '../../site/townRule.ts';
import { townRuleFault } from '../../site/townRuleFault.ts';
import type { TownRules } from '../../site/townRules.ts';
import { parseLength } from '../../units/parseLength.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { bookImport, type BookImport } from './bookImport.ts';
import { bookTable, type BookCells, type BookColumns } from './bookTable.ts';
import { keyIn } from './keyIn.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The book that the rows are for, and ids for rules that have none; each call gives a new one. */
export interface TownRulesInto {
  readonly book: TownRules;
  readonly freshId: () => TownRuleId;
}

type Cells = BookCells<TownRuleColumn>;

const columns: BookColumns<TownRuleColumn> = {
  all: [...townRuleColumns.map(({ name }) => name), keyColumn],
  needed: ['Town'],
};

const idOf = (key: string): TownRuleId | null => {
  const id = townRuleId.safeParse(`town-rule:${key}`);
  return id.success ? (id.data as TownRuleId) : null;
};

const measureIn = ({ Measure = '' }: Cells): Parsed<TownRule['measure']> => {
  const cell = Measure.trim().replace(/\s+/g, ' ').toLowerCase();
  if (cell === '') return read(null);
  const measure = townMeasures.find((one) => one === cell);
  if (measure !== undefined) return read(measure);
  return unread(
    phrase`Measure: expected nothing, ${townMeasures.join(', ')}; found ${quotedText(Measure)}`,
  );
};

const limitIn = ({ Limit = '' }: Cells): Parsed<TownRule['limit']> => {
  if (Limit.trim() === '') return read(null);
  const limit = parseLength(Limit);
  if (!limit.ok) return unread(phrase`Limit: ${limit.reason}`);
  if (limit.value >= 0) return limit;
  return unread(phrase`Limit: expected 0 or more, found ${quotedText(Limit)}`);
};

const headings = { town: 'Town', limit: 'Limit', words: 'Words' } as const;

const ruleIn = (cells: Cells): Parsed<TownRule> => {
  const measure = measureIn(cells);
  if (!measure.ok) return measure;
  const limit = limitIn(cells);
  if (!limit.ok) return limit;
  const rule: TownRule = {
    town: cells.Town?.trim() ?? '',
    measure: measure.value,
    limit: limit.value,
    words: cells.Words ?? '',
    source: cells.Source?.trim() ?? '',
  };
  const fault = townRuleFault(rule);
  if (fault !== null) return unread(phrase`${headings[fault.field]}: expected ${fault.expected}`);
  const sound = soundTownRule.safeParse(rule);
  return sound.success ? read(rule) : unread(issueLine(sound.error, rule, []));
};

/** The rule of the book that a row speaks of: by its key, else by town, measure and words. */
const meantBy = (cells: Cells, rule: TownRule, into: TownRulesInto): Parsed<TownRuleId> => {
  const key = keyIn(cells.Key, idOf);
  if (!key.ok) return key;
  if (key.value !== null) return read(key.value);
  const [first, second] = Object.entries<TownRule>(into.book)
    .filter(
      ([, one]) =>
        sameTown(one.town, rule.town) &&
        one.measure === rule.measure &&
        one.words.trim() === rule.words.trim(),
    )
    .map(([id]) => id as TownRuleId);
  if (second === undefined) return read(first ?? into.freshId());
  return unread(
    phrase`the book has more than one rule of ${quotedText(rule.town)} of this measure and words: expected a Key`,
  );
};

const readRow = (
  cells: Cells,
  into: TownRulesInto,
): Parsed<{ readonly id: TownRuleId; readonly entry: TownRule }> => {
  const rule = ruleIn(cells);
  if (!rule.ok) return rule;
  const id = meantBy(cells, rule.value, into);
  return id.ok ? read({ id: id.value, entry: rule.value }) : id;
};

/**
 * What comma-separated text with the columns Town, Measure, Limit, Words and Source, in any order, would
 * add to a book of town rules or change in it; a bare limit is inches. Rows that cannot be taken are told
 * by their line. Unread with one line for a text that is no such file.
 */
export const townRulesFromCsv = (
  text: string,
  into: TownRulesInto,
): Parsed<BookImport<TownRuleId, TownRule>> => {
  const table = bookTable(text, columns);
  if (!table.ok) return table;
  return read(
    bookImport(table.value, {
      book: into.book,
      called: phrase`rule`,
      readRow: (cells) => readRow(cells, into),
    }),
  );
};
