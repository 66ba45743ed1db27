import type { Comparison } from '../../engine/compare/comparison.ts';
import type { ComparedLine } from '../../engine/compare/comparedLines.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { amountText } from './amountText.ts';
import { comparedColumns } from './comparedColumns.ts';
import { moreText } from './moreText.ts';
import type { Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const rowOf = (line: ComparedLine, style: LengthStyle): string[] => {
  const { item, each, counts } = line;
  const [first = 0] = counts;
  return [
    each === null ? item : phrase`${item}, ${formatLength(each, fineStyle(style))} each`,
    ...counts.map((count, n) =>
      moreText(count, n === 0 ? null : count - first, (size) => amountText(size, line, style)),
    ),
  ];
};

/** The lines by which the load lists of yards side by side differ, with how many each needs. */
export const comparedLoadTable = (
  comparison: Comparison,
  { lengths }: Pick<Site, 'lengths'>,
): Table => ({
  title: phrase`Where the load lists differ`,
  columns: comparedColumns(comparison),
  rows: comparison.lines.map((line) => rowOf(line, lengths)),
});
