import type { Table } from './table.ts';

/** A table without the columns of some headings; headings that it lacks take nothing away. */
export const withoutColumns = (table: Table, headings: readonly string[]): Table => {
  const keep = table.columns.map(({ heading }) => !headings.includes(heading));
  const kept = <T>(cells: readonly T[]): T[] => cells.filter((_, n) => keep[n]);
  return { ...table, columns: kept(table.columns), rows: table.rows.map(kept) };
};
