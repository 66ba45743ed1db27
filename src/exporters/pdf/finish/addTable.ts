import type { PDFDocument, PDFRef } from 'pdf-lib';
import type { Cell } from '../../../drawing/atom.ts';
import { StructurePart } from './structurePart.ts';

/** A marked text in a table: its number on the page and its cell. */
export interface MarkedCell {
  readonly mark: number;
  readonly cell: Cell;
}

/** Where a part of the structure stands: under which other, on which page. */
export interface Place {
  readonly under: PDFRef;
  readonly page: PDFRef;
}

/** Neighbours that belong together, in their order. */
const together = <T>(all: readonly T[], belong: (a: T, b: T) => boolean): T[][] => {
  const groups: T[][] = [];
  for (const one of all) {
    const last = groups.at(-1);
    const before = last?.at(-1);
    if (last !== undefined && before !== undefined && belong(before, one)) last.push(one);
    else groups.push([one]);
  }
  return groups;
};

/** Whether a text goes on in the table of the one before it: rows and columns go up within one table. */
export const goesOn = (before: Cell, next: Cell): boolean =>
  next.row > before.row || (next.row === before.row && next.column >= before.column);

/** What is told of the head of a column, or of rows under its name, besides its text (ISO 32000-1, 14.8.5.7). */
const attributes = ({ spans }: Cell): string =>
  `<<\n/O /Table\n/Scope /Column\n${spans > 1 ? `/ColSpan ${spans}\n` : ''}>>`;

/**
 * A table of the structure: its rows, in each every cell, also those without a text.
 * @returns the table, and the cell that each mark belongs to.
 */
export const addTable = (
  { context }: PDFDocument,
  marked: readonly MarkedCell[],
  { under, page }: Place,
): { readonly table: PDFRef; readonly owners: ReadonlyMap<number, PDFRef> } => {
  const table = context.nextRef();
  const owners = new Map<number, PDFRef>();
  const rows = together(marked, (a, b) => a.cell.row === b.cell.row).map((own) => {
    const row = context.nextRef();
    const [first] = own;
    const count = first === undefined || first.cell.spans > 1 ? 1 : first.cell.columns;
    // texts of a row go up by columns
    let next = 0;
    const cells = Array.from({ length: count }, (_, column) => {
      const cell = own[next]?.cell.column === column ? own[next]?.cell : first?.cell;
      const role = cell?.is === 'head' ? 'TH' : 'TD';
      const kids: number[] = [];
      for (let text = own[next]; text?.cell.column === column; text = own[(next += 1)])
        kids.push(text.mark);
      const told = { role, under: row, page, kids } as const;
      const head = cell?.is === 'head' ? { attributes: attributes(cell) } : {};
      const part = context.register(new StructurePart({ ...told, ...head }));
      for (const mark of kids) owners.set(mark, part);
      return part;
    });
    context.assign(row, new StructurePart({ role: 'TR', under: table, page, kids: cells }));
    return row;
  });
  context.assign(table, context.obj({ S: 'Table', P: under, Pg: page, K: rows }));
  return { table, owners };
};
