import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { loadOf } from '../../engine/load/loadOf.ts';
import type { Site } from '../../site/site.ts';
import { curveTables } from './curveTables.ts';
import { cutTable } from './cutTable.ts';
import { flagTable } from './flagTable.ts';
import { holeTable } from './holeTable.ts';
import { loadTable } from './loadTable.ts';
import { measuredTable } from './measuredTable.ts';
import { openingTable } from './openingTable.ts';
import { structureTable } from './structureTable.ts';
import type { Table } from './table.ts';
import { townRuleTable } from './townRuleTable.ts';
import { workingTable } from './workingTable.ts';

/** The tables of a set of sheets by name, in the order of its pages. */
export const sheetTableNames = [
  'openings',
  'workings',
  'holes',
  'curves',
  'load',
  'cuts',
  'flags',
  'measured',
  'structure',
  'towns',
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

const linesOf = ({ lines }: Layout): LineLayout[] => Object.values(lines);

const makes: Readonly<Record<SheetTableName, Make>> = {
  openings: single('Table', (site, layout) => openingTable(layout, site)),
  workings: (site, { gates }) => ({
    of: 'Gate',
    tables: Object.values<GateLayout>(gates).map((gate) => workingTable(gate, site)),
  }),
  holes: (site, layout) => ({
    of: 'Fence line',
    tables: linesOf(layout).map((line) => holeTable(line, layout, site)),
  }),
  curves: (site, layout) => ({
    of: 'Curve',
    tables: linesOf(layout).flatMap((line) =>
      curveTables(line, layout, site).map(({ table }) => table),
    ),
  }),
  load: single('List', (site, layout) => loadTable(loadOf(site, layout), site)),
  cuts: (site, layout) => ({
    of: 'Cut of',
    tables: loadOf(site, layout).tickets.map((ticket) => cutTable(ticket, site)),
  }),
  flags: single('Table', flagTable),
  measured: single('Table', measuredTable),
  structure: single('Table', structureTable),
  towns: single('Table', townRuleTable),
};

/** The tables of a site's sheets that go by a name, whole: of the load list with how it was counted. */
export const sheetTables = (name: SheetTableName, site: Site, layout: Layout): SheetTables =>
  makes[name](site, layout);
