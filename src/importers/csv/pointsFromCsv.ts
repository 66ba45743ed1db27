import type { Found, FoundRefusal } from '../../site/found.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { wholeFile, type Drawn } from '../drawn.ts';
import type { FileUnit } from '../fileUnit.ts';
import { fileUnitWords } from '../fileUnitWords.ts';
import { foundFrom } from '../foundFrom.ts';
import { csvDelimiter } from './csvDelimiter.ts';
import {
  bareColumns,
  headedColumns,
  type PointColumns,
  type PointOrder,
  type PointPlace,
} from './pointColumns.ts';
import { readCsv, type CsvDelimiter, type CsvRow } from './readCsv.ts';
import { orderText } from './orderText.ts';
import { withoutBlankColumns } from './withoutBlankColumns.ts';
import { readPointRow, type NumberForm } from './readPointRow.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/** How a list of points is read. */
export interface PointForm {
  /** The unit of numbers whose heading names none: as chosen, else as the site is measured. */
  readonly chosen: FileUnit | null;
  readonly usual: FileUnit;
  /** The order of columns without headings; null for what their cells suggest. */
  readonly order: PointOrder | null;
}

const named: Readonly<Record<CsvDelimiter, string>> = {
  ',': phrase`commas`,
  ';': phrase`semicolons`,
  '\t': phrase`tabs`,
};

/** A list of points: where its columns stand, its first row, and the rows of its points. */
interface Laid {
  readonly columns: PointColumns;
  readonly first: CsvRow;
  readonly headings: 'named' | 'none';
  readonly rows: readonly CsvRow[];
}

const placesOf = ({ x, y, z }: PointColumns): PointPlace[] => [x, y, ...(z === null ? [] : [z])];

/** Where commas do not part the cells, they may be before the decimals: never in a file that has both. */
const decimalOf = (
  rows: readonly CsvRow[],
  columns: PointColumns,
  delimiter: CsvDelimiter,
): '.' | ',' => {
  if (delimiter === ',') return '.';
  const cells = rows.flatMap((row) => placesOf(columns).map(({ at }) => row.cells[at] ?? ''));
  const commas = cells.some((cell) => /^\s*[-+]?\d*,\d+\s*$/.test(cell));
  return commas && !cells.some((cell) => /\d\.\d/.test(cell)) ? ',' : '.';
};

const unitText = (columns: PointColumns, { chosen, usual }: PointForm): string => {
  const told = placesOf(columns).map(({ unit }) => unit);
  const units = new Set(told.map((unit) => fileUnitWords[unit ?? chosen ?? usual]));
  const all = joined([...units], phrase` and `);
  if (told.every((unit) => unit !== null)) return phrase`Read in ${all}, as the headings say`;
  return chosen === null
    ? phrase`The file names no unit: read in ${all}`
    : phrase`Read in ${all}, as chosen`;
};

const columnsText = (
  { columns, first, headings }: Laid,
  parted: string,
  order: PointOrder | null,
): string => {
  const found = orderText(columns, first);
  if (headings === 'named') return phrase`Columns parted by ${parted}: ${found}`;
  const how =
    order === null ? phrase`: choose another order if that is wrong` : phrase`, as chosen`;
  return phrase`Columns parted by ${parted}, without headings, taken as ${found}${how}`;
};

/** What is behind the columns of a row is of its last one: a remark may have commas. */
const gathered = (row: CsvRow, last: number): CsvRow => ({
  ...row,
  cells: [...row.cells.slice(0, last), row.cells.slice(last).join(' ')],
});

const bareLaid = (rows: readonly CsvRow[], order: PointOrder | null): Laid | null => {
  const [first] = rows;
  const columns = first === undefined ? null : bareColumns(first, order);
  if (first === undefined || columns === null) return null;
  const last = columns.remark?.at;
  const all = last === undefined ? rows : rows.map((row) => gathered(row, last));
  return { columns, first, headings: 'none', rows: all };
};

/** The columns and rows of points; columns that nothing stands in count only where they have a place. */
const laidOut = (rows: readonly CsvRow[], order: PointOrder | null): Parsed<Laid> => {
  const bare = bareLaid(rows, order) ?? bareLaid(withoutBlankColumns(rows), order);
  if (bare !== null) return read(bare);
  const [first] = rows;
  if (first === undefined) return unread(phrase`line 1: expected points, found an empty file`);
  const columns = headedColumns(first, 'if any');
  if (!columns.ok) return columns;
  return read({ columns: columns.value, first, headings: 'named', rows: rows.slice(1) });
};

const readRows = (rows: readonly CsvRow[], columns: PointColumns, form: NumberForm) => {
  const [drawn, refused]: [Drawn[], FoundRefusal[]] = [[], []];
  for (const row of rows) {
    const where = phrase`line ${row.line}`;
    const point = readPointRow(row, columns, form);
    if (!point.ok) refused.push({ where, reason: point.reason });
    else {
      const { name, x, y, z } = point.value;
      drawn.push({ kind: 'point', layer: wholeFile, where, name, at: { x, y }, z });
    }
  }
  return { drawn, refused };
};

/**
 * The points of a text whose cells are parted by commas, semicolons or tabs: columns in any order under
 * headings (name, x or east, y or north, z or elevation, description), or in an order that is chosen, or
 * that the first row suggests, which is told. A
 * unit that a heading or a cell names counts. Where all numbers have decimal commas they are read so. A row
 * that cannot be read is told by its line, the others can be brought. Unread with one line for a text
 * without its columns.
 */
export const pointsFromCsv = (text: string, form: PointForm): Parsed<Found> => {
  const delimiter = csvDelimiter(text);
  const all = readCsv(text, delimiter);
  if (!all.ok) return all;
  const filled = all.value.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const laid = laidOut(filled, form.order);
  if (!laid.ok) return laid;
  const { rows, columns } = laid.value;
  const decimal = decimalOf(rows, columns, delimiter);
  const bare = form.chosen ?? form.usual;
  const { drawn, refused } = readRows(rows, columns, { unit: bare, decimal });
  const parted = `${named[delimiter]}${decimal === ',' ? phrase`, with decimal commas` : ''}`;
  const told = [unitText(columns, form), columnsText(laid.value, parted, form.order)];
  const none = phrase`expected points below the headings, found none`;
  const unit = columns.x.unit ?? bare;
  return foundFrom(drawn, { unit, lines: 'apart', origin: null, told, refused, none });
};
