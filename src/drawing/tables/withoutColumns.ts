import type { Column, Table } from './table.ts';

/** A table without the columns of some things; those that it lacks take nothing away. */
export const withoutColumns = <Own extends Table>(
  table: Own,
  what: readonly NonNullable<Column['is']>[],
): Own => {
  const keep = table.columns.map(({ is }) => is === undefined || !what.includes(is));
  const kept = <T>(cells: readonly T[]): T[] => cells.filter((_, n) => keep[n]);
  return { ...table, columns: kept(table.columns), rows: table.rows.map(kept) };
};
