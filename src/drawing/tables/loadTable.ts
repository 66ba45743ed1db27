import type { Load } from '../../engine/load/load.ts';
import type { LoadLine } from '../../engine/loadLine.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { amountText } from './amountText.ts';
import type { Column, Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Item`, align: 'left', share: 2 },
  { heading: phrase`Needed`, align: 'right', share: 1 },
  { heading: phraseOf('length')`Each`, align: 'right', share: 1 },
  { heading: phrase`Bought as`, align: 'left', share: 1.5 },
  { heading: phrase`How it was counted`, align: 'left', share: 3 },
  { heading: phrase`Rule from`, align: 'left', share: 2 },
];

const yardText = (count: number): string =>
  count === 1 ? phrase`1 length from the yard` : phrase`${count} lengths from the yard`;

/** What is bought, and what lies in the yard and goes on the truck with it. */
const soldText = (line: LoadLine, style: LengthStyle): string => {
  const { sold } = line;
  if (sold === null) return '';
  if (sold.count === 0 && sold.fromYard > 0) return phrase`none, ${yardText(sold.fromYard)}`;
  const left = sold.left > 1e-6 ? phrase`, ${amountText(sold.left, line, style)} left` : '';
  const yard = sold.fromYard > 0 ? phrase`, and ${yardText(sold.fromYard)}` : '';
  return `${sold.count} × ${sold.pack}${left}${yard}`;
};

/** Everything that goes on the truck: what is needed, what is bought for it, and the rule that counted it. */
export const loadTable = ({ lines }: Pick<Load, 'lines'>, { lengths }: Site): Table => ({
  title: phrase`Load list`,
  columns,
  rows: lines.map((line) => [
    line.item,
    amountText(line.count, line, lengths),
    line.each === null ? '' : formatLength(line.each, fineStyle(lengths)),
    soldText(line, lengths),
    line.rule,
    line.sold === null || line.sold.source === line.source
      ? line.source
      : phrase`${line.source}; packs: ${line.sold.source}`,
  ]),
});
