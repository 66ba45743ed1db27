import { withoutColumns } from './withoutColumns.ts';
import type { Table } from './table.ts';

const above = 'Above ground';

/** The different texts of a column, of some rows; empty cells say nothing. */
const said = (rows: readonly (readonly string[])[], column: number): string[] => [
  ...new Set(rows.map((row) => row[column] ?? '').filter((cell) => cell !== '')),
];

/**
 * A hole table without its column of heights over the ground where one sentence says them: all
 * posts alike, or line posts alike and all others alike. Else the table as it is, and no sentence.
 */
export const aboveGround = (
  table: Table,
): { readonly table: Table; readonly text: string | null } => {
  const column = table.columns.findIndex(({ heading }) => heading === above);
  const kind = table.columns.findIndex(({ heading }) => heading === 'What');
  const isLine = (row: readonly string[]): boolean => (row[kind] ?? '').startsWith('line');
  const all = said(table.rows, column);
  const lines = said(table.rows.filter(isLine), column);
  const others = said(
    table.rows.filter((row) => !isLine(row)),
    column,
  );
  const lean = withoutColumns(table, [above]);
  if (all.length === 1) return { table: lean, text: `Above ground: all posts ${all[0]}.` };
  if (lines.length === 1 && others.length === 1) {
    return { table: lean, text: `Above ground: line posts ${lines[0]}, all others ${others[0]}.` };
  }
  return { table, text: null };
};
