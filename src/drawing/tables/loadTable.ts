import type { Layout } from '../../engine/layout.ts';
import type { LoadLine } from '../../engine/loadLine.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Item', align: 'left', share: 2 },
  { heading: 'Count', align: 'right', share: 1 },
  { heading: 'Each', align: 'right', share: 1 },
  { heading: 'How it was counted', align: 'left', share: 3 },
  { heading: 'Rule from', align: 'left', share: 2 },
];

const countText = ({ count, unit }: LoadLine, style: LengthStyle): string => {
  if (unit === 'length') return formatLength(inches(count), style);
  if (unit === 'cubic feet') {
    const isMetric = style.system === 'mm' || style.system === 'm';
    // 1 cu ft is 0.3048³ cubic metres
    return isMetric ? `${(count * 0.3048 ** 3).toFixed(2)} m³` : `${count.toFixed(1)} cu ft`;
  }
  return String(count);
};

/** Everything that goes on the truck, with the rule that counted it. */
export const loadTable = ({ load }: Layout, { lengths }: Site): Table => ({
  title: 'Load list',
  columns,
  rows: load.map((line) => [
    line.item,
    countText(line, lengths),
    line.each === null ? '' : formatLength(line.each, fineStyle(lengths)),
    line.rule,
    line.source,
  ]),
});
