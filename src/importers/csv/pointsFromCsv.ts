import type { Found, FoundRefusal } from '../../site/found.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { wholeFile, type Drawn } from '../drawn.ts';
import type { FileUnit } from '../fileUnit.ts';
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
import { readPointRow, type NumberForm } from './readPointRow.ts';

/** How a list of points is read. */
export interface PointForm {
  /** The unit of numbers whose heading names none: as chosen, else as the site is measured. */
  readonly chosen: FileUnit | null;
  readonly usual: FileUnit;
  /** The order of columns without headings; null for what their cells suggest. */
  readonly order: PointOrder | null;
}

const named: Readonly<Record<CsvDelimiter, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
};

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

const orderText = (columns: PointColumns, first: CsvRow): string =>
  (['label', 'x', 'y', 'z', 'remark'] as const)
    .flatMap((column) => {
      const at = columns[column]?.at;
      return at === undefined || at >= first.cells.length ? [] : [{ column, at }];
    })
    .toSorted((a, b) => a.at - b.at)
    .map(
      ({ column }) =>
        ({ label: 'name', x: 'x (east)', y: 'y (north)', z: 'z', remark: 'remark' })[column],
    )
    .join(', ');

const unitText = (columns: PointColumns, { chosen, usual }: PointForm): string => {
  const told = placesOf(columns).map(({ unit }) => unit);
  const all = [...new Set(told.map((unit) => unit ?? chosen ?? usual))].join(' and ');
  if (told.every((unit) => unit !== null)) return `Read in ${all}, as the headings say`;
  return chosen === null ? `The file names no unit: read in ${all}` : `Read in ${all}, as chosen`;
};

const readRows = (rows: readonly CsvRow[], columns: PointColumns, form: NumberForm) => {
  const [drawn, refused]: [Drawn[], FoundRefusal[]] = [[], []];
  for (const row of rows) {
    const where = `line ${row.line}`;
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
 * headings (name, x or east, y or north, z or elevation, description), or in an order that is chosen. A
 * unit that a heading or a cell names counts. Where all numbers have decimal commas they are read so. A row
 * that cannot be read is told by its line, the others can be brought. Unread with one line for a text
 * without its columns.
 */
export const pointsFromCsv = (text: string, form: PointForm): Parsed<Found> => {
  const delimiter = csvDelimiter(text);
  const all = readCsv(text, delimiter);
  if (!all.ok) return all;
  const [first] = all.value;
  if (first === undefined) return unread('line 1: expected points, found an empty file');
  const bare = bareColumns(first, form.order);
  const columns = bare === null ? headedColumns(first, 'if any') : read(bare);
  if (!columns.ok) return columns;
  const rows = bare === null ? all.value.slice(1) : all.value;
  const decimal = decimalOf(rows, columns.value, delimiter);
  const unit = form.chosen ?? form.usual;
  const { drawn, refused } = readRows(rows, columns.value, { unit, decimal });
  const how = decimal === ',' ? ', with decimal commas' : '';
  const told = [
    unitText(columns.value, form),
    `Columns parted by ${named[delimiter]}${how}: ${orderText(columns.value, first)}`,
  ];
  const none = 'expected points below the headings, found none';
  return foundFrom(drawn, { unit, lines: 'apart', origin: null, told, refused, none });
};
