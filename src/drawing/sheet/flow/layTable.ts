import type { Atom } from '../../atom.ts';
import { rectangleOutline, segmentsOutline } from '../../explode/polylineOutline.ts';
import { shorten } from '../../shorten.ts';
import { printable } from '../../printable.ts';
import type { Table } from '../../tables/table.ts';
import { wrapText } from '../../wrapText.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block, Stack } from './block.ts';
import { cellPad, columnWidths } from './columnWidths.ts';
import { cellAt, groupCell } from './cellAt.ts';
import { subheading } from './heading.ts';
import { inGroups } from './inGroups.ts';
import { stackBlocks } from './stackBlocks.ts';
import { phrase } from '../../../phrases/phrase.ts';

const line = letters.body * lineSpacing;
/** A column made to measure for a text still holds it after its last bits are rounded; inches. */
const dust = 1e-9;
const usualPad = 0.05;

interface Grid {
  readonly table: Table;
  readonly widths: readonly number[];
  readonly width: number;
  /** Clear over and under the text of a row, paper inches. */
  readonly pad: number;
}

const linesOf = (
  text: string,
  width: number,
  look: { weight: 'regular' | 'bold'; wrap: boolean },
) =>
  look.wrap
    ? wrapText(text, { width, size: letters.body, weight: look.weight })
    : [shorten(printable(text), width, letters.body, look.weight)];

/** One row, as high as its highest cell; row 0 is the head, in bold. */
const layRow = ({ table, widths, pad }: Grid, cells: readonly string[], row: number): Block => {
  const weight = row === 0 ? 'bold' : 'regular';
  let x = 0;
  let most = 1;
  const atoms = table.columns.flatMap(({ align }, n): Atom[] => {
    const width = widths[n] ?? 0;
    const wrap = align === 'left' || weight === 'bold';
    const lines = linesOf(cells[n] ?? '', width - 2 * cellPad + dust, { weight, wrap });
    most = Math.max(most, lines.length);
    const at = align === 'right' ? x + width - cellPad : x + cellPad;
    x += width;
    const look = { weight, align, cell: cellAt(row, n, table.columns.length) } as const;
    return lines.flatMap((text, under) => lineOfText(text, at, pad + (under + 0.5) * line, look));
  });
  return { height: most * line + 2 * pad, atoms };
};

const ruled = ({ width }: Grid, row: Block, strong: boolean): Block => {
  const pen = strong
    ? ({ ink: 'line', width: 0.014, dash: [] } as const)
    : ({ ink: 'faint', width: 0.005, dash: [] } as const);
  const outline = segmentsOutline([
    [
      { x: 0, y: row.height },
      { x: width, y: row.height },
    ],
  ]);
  return { height: row.height, atoms: [...row.atoms, { do: 'stroke', pen, outline }] };
};

const shaded = ({ width }: Grid, row: Block): Block => ({
  height: row.height,
  atoms: [
    {
      do: 'fill',
      ink: 'grid',
      opacity: 0.35,
      outline: rectangleOutline({ x: 0, y: 0 }, width, row.height),
    },
    ...row.atoms,
  ],
});

/** The name of a group over its first row, across the table. */
const groupName = (name: string, row: number, grid: Grid): Block =>
  ruled(
    grid,
    {
      height: line + 2 * grid.pad + 0.06,
      atoms: lineOfText(name, cellPad, grid.pad + 0.06 + line / 2, {
        weight: 'bold',
        width: grid.width - 2 * cellPad,
        cell: groupCell(row, grid.table.columns.length),
      }),
    },
    false,
  );

/**
 * A table laid out to fill a width: its title, its headings, and its rows with every other one
 * shaded. Where it goes on elsewhere, title and headings are repeated. A table without rows says
 * so in one. Groups are named over their first rows, and again where they go on elsewhere. `pad` is clear over and under the text of a row; paper inches.
 */
export const layTable = (table: Table, width: number, pad = usualPad): Stack => {
  const grid = { table, widths: columnWidths(table, width), width, pad };
  const columns = ruled(
    grid,
    layRow(
      grid,
      table.columns.map(({ heading }) => heading),
      0,
    ),
    true,
  );
  const rows = table.rows.map((cells, n) => {
    const row = ruled(grid, layRow(grid, cells, n + 1), false);
    return n % 2 === 1 ? shaded(grid, row) : row;
  });
  const named = (title: string): Block =>
    stackBlocks([...(title === '' ? [] : [subheading(title, width)]), columns]);
  const none: Block = {
    height: line + 2 * pad,
    atoms: lineOfText(phrase`none`, cellPad, pad + line / 2, { ink: 'dimension' }),
  };
  return {
    head: named(table.title),
    again: named(table.title === '' ? '' : phrase`${table.title}, continued`),
    rows:
      rows.length === 0
        ? [none]
        : inGroups(rows, table.groups ?? [], {
            lay: (name, row) => groupName(name, row + 1, grid),
            width: width - 2 * cellPad,
          }),
    gap: 0.2,
  };
};
