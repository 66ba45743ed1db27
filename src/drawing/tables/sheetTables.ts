import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { postTies } from '../../engine/ties/postTies.ts';
import { loadOf } from '../../engine/load/loadOf.ts';
import type { Site } from '../../site/site.ts';
import { countsTable } from './countsTable.ts';
import { curveTables } from './curveTables.ts';
import { cutTable } from './cutTable.ts';
import { flagTable } from './flagTable.ts';
import { holeTable } from './holeTable.ts';
import { loadTable } from './loadTable.ts';
import { measuredTable } from './measuredTable.ts';
import { openingTable } from './openingTable.ts';
import { structureTable } from './structureTable.ts';
import { leansForm, leavesForm, setFormTitles, widthsForm, type SetRows } from './setForms.ts';
import { setPosts } from './setPosts.ts';
import type { Table } from './table.ts';
import { tieCheckTable, tieTable } from './tieTables.ts';
import { townRuleTable } from './townRuleTable.ts';
import { workingTable } from './workingTable.ts';
import { phrase } from '../../phrases/phrase.ts';
import { setHeadings } from './setColumns.ts';

/** The tables of a set of sheets by name, in the order of its pages. */
export const sheetTableNames = [
  'counts',
  'openings',
  'workings',
  'holes',
  'curves',
  'ties',
  'tie-checks',
  'load',
  'cuts',
  'flags',
  'measured',
  'structure',
  'towns',
  'set-openings',
  'set-leans',
  'set-leaves',
  'set-posts',
] as const;

export type SheetTableName = (typeof sheetTableNames)[number];

/** Tables of one kind, which have the same columns, and what their titles name. */
export interface SheetTables {
  readonly of: string;
  readonly tables: readonly Table[];
}

type Make = (site: Site, layout: Layout) => SheetTables;

const single =
  (of: string, make: (site: Site, layout: Layout) => Table): Make =>
  (site, layout) => ({ of, tables: [make(site, layout)] });

/** A form of the set record with what is in it already; cells that a hand fills in are empty. */
const form = (title: string, make: (site: Site, layout: Layout) => SetRows): Make =>
  single(phrase`Form`, (site, layout) => {
    const { columns, rows } = make(site, layout);
    return {
      title,
      rows,
      columns: columns.map((of) => ({ heading: setHeadings[of], align: 'left', share: 1 })),
    };
  });

const linesOf = ({ lines }: Layout): LineLayout[] => Object.values(lines);

const makes: Readonly<Record<SheetTableName, Make>> = {
  counts: single(phrase`Table`, (site, layout) => countsTable(site, layout, Infinity)),
  openings: single(phrase`Table`, (site, layout) => openingTable(layout, site)),
  workings: (site, { gates }) => ({
    of: phrase`Gate`,
    tables: Object.values<GateLayout>(gates).map((gate) => workingTable(gate, site)),
  }),
  holes: (site, layout) => ({
    of: phrase`Fence line`,
    tables: linesOf(layout).map((line) => holeTable(line, layout, site)),
  }),
  curves: (site, layout) => ({
    of: phrase`Curve`,
    tables: linesOf(layout).flatMap((line) =>
      curveTables(line, layout, site).map(({ table }) => table),
    ),
  }),
  ties: single(phrase`Table`, (site, layout) => tieTable(postTies(site, layout), layout, site)),
  'tie-checks': single(phrase`Table`, (site, layout) =>
    tieCheckTable(postTies(site, layout), layout, site),
  ),
  load: single(phrase`List`, (site, layout) => loadTable(loadOf(site, layout), site)),
  cuts: (site, layout) => ({
    of: phrase`Cut of`,
    tables: loadOf(site, layout).tickets.map((ticket) => cutTable(ticket, site)),
  }),
  flags: single(phrase`Table`, flagTable),
  measured: single(phrase`Table`, measuredTable),
  structure: single(phrase`Table`, structureTable),
  towns: single(phrase`Table`, townRuleTable),
  'set-openings': form(setFormTitles.widths, widthsForm),
  'set-leans': form(setFormTitles.leans, leansForm),
  'set-leaves': form(setFormTitles.leaves, leavesForm),
  'set-posts': form(setFormTitles.posts, setPosts),
};

/** How many rows tables have between them, and what to say of them where that is none. */
export const rowsOf = (tables: readonly Table[]): { count: number; none: string | null } => {
  const count = tables.reduce((sum, { rows }) => sum + rows.length, 0);
  if (count > 0) return { count, none: null };
  const left =
    tables.length === 0 ? phrase`the file is empty` : phrase`the file has its headings alone`;
  return { count, none: phrase`this table has no rows here: ${left}` };
};

/** The tables of a site's sheets that go by a name, whole: of the load list with how it was counted. */
export const sheetTables = (name: SheetTableName, site: Site, layout: Layout): SheetTables =>
  makes[name](site, layout);
