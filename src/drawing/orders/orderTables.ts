import { standingsOf } from '../../engine/sign/standingsOf.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { hingeSets } from '../../trade/hingeSets.ts';
import { openingText } from '../opening/openingText.ts';
import type { Column, Table } from '../tables/table.ts';
import { orderGroups, orderLines, type OrderLine } from './orderLines.ts';
import { unsignedGates } from './unsignedGates.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

type Cell = Exclude<keyof OrderLine, 'group'>;

/** A column of an order and what it shows of a line. */
type Shown = Column & { readonly cell: Cell };

const count: Shown = { heading: phrase`Count`, align: 'right', share: 0, cell: 'count' };
const gates: Shown = { heading: phraseOf('gate')`For`, align: 'left', share: 2, cell: 'gates' };
const known: Shown = { heading: phrase`Size is`, align: 'left', share: 1, cell: 'knownFrom' };
const item: Shown = { heading: phrase`What`, align: 'left', share: 3, cell: 'item' };
const fit: Shown = { heading: phrase`Fits`, align: 'left', share: 3, cell: 'fit' };
const leafColumns: readonly Shown[] = [
  { heading: phrase`Width out to out`, align: 'left', share: 2, cell: 'width' },
  { heading: phrase`Height`, align: 'left', share: 1, cell: 'height' },
  { heading: phrase`Frame OD`, align: 'left', share: 1, cell: 'frame' },
  { heading: phrase`Hinges on the`, align: 'left', share: 1, cell: 'hinges' },
];

const titles: Readonly<Record<OrderLine['group'], string>> = {
  Leaves: phrase`Leaves: hinges on the right or left, seen from the side that the leaf opens to`,
  Hinges: phrase`Hinges: ${hingeSets.perLeaf} sets a leaf, top and bottom; in the opening they count once`,
  Latches: phrase`Latches and drop rods`,
  Closers: phrase`Closers: one a leaf`,
};

const groupWords: Readonly<Record<OrderLine['group'], string>> = {
  Leaves: phrase`Leaves`,
  Hinges: phrase`Hinges`,
  Latches: phrase`Latches`,
  Closers: phrase`Closers`,
};

const cellsOf = (line: OrderLine, columns: readonly Shown[]): string[] =>
  columns.map(({ cell }) => String(line[cell]));

const plain = ({ heading, align, share }: Shown): Column => ({ heading, align, share });

/** The order as it is printed: a table for leaves, hinges, latches, closers; none for what there is none of. */
export const orderTables = (site: Site, layout: Layout): readonly Table[] => {
  const lines = orderLines(site, layout);
  return orderGroups.flatMap((group): Table[] => {
    const own = lines.filter((line) => line.group === group);
    const columns =
      group === 'Leaves'
        ? [count, item, ...leafColumns, gates, known]
        : [count, item, fit, gates, known];
    const rows = own.map((line) => cellsOf(line, columns));
    return own.length === 0 ? [] : [{ title: titles[group], columns: columns.map(plain), rows }];
  });
};

/**
 * The order as lines of one form for a spreadsheet, under the names of its parts. Every line says
 * whether all openings are signed off: `signed`, or UNSIGNED.
 */
export const orderRows = (site: Site, layout: Layout): readonly Table[] => {
  const shown = [count, item, ...leafColumns, fit, gates, known];
  const sign = unsignedGates(site, layout).length === 0 ? phrase`signed` : phrase`UNSIGNED`;
  const columns = [
    ...shown.map(plain),
    { heading: phrase`Sign-off`, align: 'left', share: 1 } as const,
  ];
  const lines = orderLines(site, layout);
  return orderGroups.map((group) => ({
    title: groupWords[group],
    columns,
    rows: lines.flatMap((line) => (line.group === group ? [[...cellsOf(line, shown), sign]] : [])),
  }));
};

const signColumns: readonly Column[] = [
  { heading: phrase`Gate`, align: 'left', share: 2 },
  { heading: phrase`Opening to hold`, align: 'right', share: 1 },
  { heading: phrase`Signed off by`, align: 'left', share: 1 },
  { heading: phrase`Day`, align: 'left', share: 1 },
  { heading: phrase`Check`, align: 'left', share: 1 },
];

/** What the order was made for: every opening and who signed it. */
export const signTable = (site: Site, layout: Layout): Table => ({
  title: phrase`Openings that it is ordered for`,
  columns: signColumns,
  rows: standingsOf(site, layout).map(({ id, standing }) => {
    const target = layout.gates[id]?.opening.target;
    const signed =
      standing.kind === 'signed'
        ? [standing.signOff.by, standing.signOff.on, standing.signOff.check]
        : [standing.kind === 'void' ? phrase`UNSIGNED: sign-off void` : phrase`UNSIGNED`, '', ''];
    return [
      site.gates[id]?.label.trim() || phrase`Gate`,
      target === undefined ? '' : openingText(target, site.lengths),
      ...signed,
    ];
  }),
});
