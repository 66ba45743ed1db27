import type { Table } from '../../drawing/tables/table.ts';

/** Spreadsheets run a cell that begins with one of these as a formula. */
const startsFormula = /^[=+\-@\t\r]/;

const cell = (text: string): string => {
  const harmless = startsFormula.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};

/**
 * Tables of one kind as comma-separated text (RFC 4180, CRLF line ends): the columns once, then
 * every row behind the title of its table, under the heading `of`. A cell that a spreadsheet would
 * run as a formula gets an apostrophe before it. No tables give an empty text.
 */
export const toCsv = (of: string, tables: readonly Table[]): string => {
  const [first] = tables;
  if (first === undefined) return '';
  const headings = [of, ...first.columns.map(({ heading }) => heading)];
  const rows = tables.flatMap(({ title, rows: own }) => own.map((row) => [title, ...row]));
  return [headings, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
};
