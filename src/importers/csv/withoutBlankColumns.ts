import type { CsvRow } from './readCsv.ts';

/** Rows without the columns that nothing stands in, in any of them. */
export const withoutBlankColumns = (rows: readonly CsvRow[]): readonly CsvRow[] => {
  const filled = new Set(
    rows.flatMap(({ cells }) => cells.flatMap((cell, n) => (cell.trim() === '' ? [] : [n]))),
  );
  return rows.map((row) => ({ ...row, cells: row.cells.filter((_, n) => filled.has(n)) }));
};
