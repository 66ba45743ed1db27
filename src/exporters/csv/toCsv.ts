import type { Table } from '../../drawing/tables/table.ts';
import { writeCsv } from './writeCsv.ts';

/**
 * Tables of one kind as comma-separated text, as `writeCsv`: the columns once, then every row behind
 * the title of its table, under the heading `of`. No tables give an empty text.
 */
export const toCsv = (of: string, tables: readonly Table[]): string => {
  const [first] = tables;
  if (first === undefined) return '';
  const headings = [of, ...first.columns.map(({ heading }) => heading)];
  const rows = tables.flatMap(({ title, rows: own }) => own.map((row) => [title, ...row]));
  return writeCsv([headings, ...rows]);
};
