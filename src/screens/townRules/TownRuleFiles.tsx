import { townRuleColumns } from '../../exporters/csv/townRuleColumns.ts';
import { townRulesToCsv } from '../../exporters/csv/townRulesToCsv.ts';
import { townRuleText } from '../../engine/checks/townRuleText.ts';
import { townRulesFromCsv } from '../../importers/book/townRulesFromCsv.ts';
import type { TownRule } from '../../site/townRule.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import { useBench, useSite } from '../bench.ts';
import { BookFiles, type BookFileRead } from '../book/BookFiles.tsx';
import { changeBook } from '../book/changeBook.ts';
import { freshId } from '../book/freshId.ts';
import { importLines } from '../book/importLines.ts';
import { takenRows } from '../book/takenRows.ts';

/** The book of town rules as a file, out and in. */
export const TownRuleFiles = () => {
  const { townBook } = useBench();
  const { lengths } = useSite();
  const readFile = (text: string): Parsed<BookFileRead> => {
    const book = townBook.getState().entries;
    const found = townRulesFromCsv(text, { book, freshId: () => freshId('town-rule') });
    if (!found.ok) return found;
    const lineOf = (rule: TownRule) => {
      const { asks, source } = townRuleText(rule, lengths);
      return `${rule.town}: ${asks} (${source})`;
    };
    const nameOf = ({ town }: TownRule) => town;
    return read({
      lines: importLines(found.value, { book, columns: townRuleColumns, nameOf, lineOf }),
      take: (label) => changeBook(townBook, label, takenRows(found.value)),
    });
  };
  return (
    <BookFiles
      name="town-rules.csv"
      write={() => townRulesToCsv(townBook.getState().entries)}
      read={readFile}
    />
  );
};
