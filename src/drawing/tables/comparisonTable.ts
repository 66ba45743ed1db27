import type { Compared, Figures } from '../../engine/compare/compared.ts';
import type { Comparison } from '../../engine/compare/comparison.ts';
import type { Costs } from '../../engine/compare/costs.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { comparedColumns } from './comparedColumns.ts';
import { costText } from './costText.ts';
import { moreText } from './moreText.ts';
import type { Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

type Row = readonly string[];

const counts: readonly { readonly key: Exclude<keyof Figures, 'fence'>; readonly says: string }[] =
  [
    { key: 'posts', says: phrase`Posts` },
    { key: 'holes', says: phrase`Holes` },
    { key: 'stops', says: phrase`Flags: stop` },
    { key: 'settles', says: phrase`Flags: to settle` },
  ];

const amounts: readonly { readonly key: keyof Costs; readonly says: string }[] = [
  { key: 'materials', says: phrase`Materials` },
  { key: 'labour', says: phrase`Labour` },
  { key: 'margin', says: phrase`Margin` },
  { key: 'tax', says: phrase`Tax` },
  { key: 'total', says: phrase`Total` },
];

const fenceRow = ({ columns }: Comparison, style: LengthStyle): Row => [
  phrase`Fence, gates included`,
  ...columns.map(({ fence, more }) =>
    moreText(fence, more?.fence ?? null, (length) => formatLength(length, style)),
  ),
];

const countRows = ({ columns }: Comparison): Row[] =>
  counts.map(({ key, says }) => [
    says,
    ...columns.map((one) => moreText(one[key], one.more?.[key] ?? null, String)),
  ]);

const isPriced = ({ costs }: Pick<Compared, 'costs'>): boolean => costs !== null;

const costRows = ({ columns }: Comparison): Row[] =>
  columns.every(isPriced)
    ? amounts.map(({ key, says }) => [
        says,
        ...columns.map(({ costs, more }) =>
          costText(costs?.[key] ?? null, more?.costs?.[key] ?? null),
        ),
      ])
    : [];

/**
 * Yards side by side: fence, posts, holes and flags, and by a price list what each comes to, every figure
 * with how much more or less it is than the first.
 */
export const comparisonTable = (
  comparison: Comparison,
  { lengths }: Pick<Site, 'lengths'>,
): Table => {
  const currency = comparison.columns[0]?.priced?.currency ?? '';
  return {
    title: `${phrase`Side by side`}${currency === '' ? '' : `, ${currency}`}`,
    columns: comparedColumns(comparison),
    rows: [
      fenceRow(comparison, lengths),
      ...countRows(comparison),
      ...(comparison.columns.length === 0 ? [] : costRows(comparison)),
    ],
  };
};
