import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { FileUnit } from '../fileUnit.ts';
import type { CsvRow } from './readCsv.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a file of points has of each. */
type PointColumn = 'x' | 'y' | 'z' | 'label' | 'remark';

/** One column: where it stands, and the unit of its bare numbers; null where none is named. */
export interface PointPlace {
  readonly at: number;
  readonly unit: FileUnit | null;
}

/** Where the columns of a file stand; a file may be without heights, names or remarks. */
export interface PointColumns {
  readonly x: PointPlace;
  readonly y: PointPlace;
  readonly z: PointPlace | null;
  readonly label: PointPlace | null;
  readonly remark: PointPlace | null;
}

/** Orders of columns that have no headings. */
export type PointOrder =
  'x, y, z, name' | 'y, x, z, name' | 'name, x, y, z, remark' | 'name, y, x, z, remark';

export const pointOrders: readonly PointOrder[] = [
  'name, x, y, z, remark',
  'name, y, x, z, remark',
  'x, y, z, name',
  'y, x, z, name',
];

const names: Readonly<Record<PointColumn, readonly string[]>> = {
  x: ['x', 'e', 'east', 'easting'],
  y: ['y', 'n', 'north', 'northing'],
  z: ['z', 'h', 'height', 'elev', 'elevation', 'level'],
  label: ['label', 'name', 'point', 'pt', 'p', 'number', 'no', 'id'],
  remark: ['description', 'desc', 'd', 'note', 'remark'],
};

const units: Readonly<Record<FileUnit, readonly string[]>> = {
  feet: ['ft', 'feet', 'foot'],
  'US survey feet': ['us ft', 'usft', 'ftus', 'us survey ft', 'us survey feet', 'survey feet'],
  inches: ['in', 'inch', 'inches'],
  yards: ['yd', 'yard', 'yards'],
  metres: ['m', 'metre', 'metres', 'meter', 'meters'],
  centimetres: ['cm'],
  millimetres: ['mm'],
};

const keyOf = <Key extends string>(
  map: Readonly<Record<Key, readonly string[]>>,
  word: string,
): Key | undefined => (Object.keys(map) as Key[]).find((key) => map[key].includes(word));

/** A heading: its column, and its unit, such as `x_ft`, `E (m)` or `height, mm`. */
const headingOf = (text: string): { column: PointColumn; unit: FileUnit | null } | null => {
  const [name = '', ...rest] = text.toLowerCase().match(/[a-z]+/g) ?? [];
  const column = keyOf(names, name);
  if (column === undefined) return null;
  // Point No, Point name: what else a name's heading says is no unit
  if (column === 'label' || column === 'remark') return { column, unit: null };
  const unit = rest.length === 0 ? null : keyOf(units, rest.join(' '));
  return unit === undefined ? null : { column, unit };
};

const usual = ['x', 'y', 'z', 'label', 'remark'] as const;
const isNumber = (cell: string | undefined): boolean => /^\s*[-+]?[.,]?\d/.test(cell ?? '');
const isBlank = (cell: string | undefined): boolean => (cell ?? '').trim() === '';

/** The columns of a file without headings, in an order that somebody chose. */
const inOrder = (order: PointOrder): PointColumns => {
  const words = order.split(', ').map((word) => (word === 'name' ? 'label' : word));
  const placeOf = (column: PointColumn): PointPlace | null => {
    const at = words.indexOf(column);
    return at < 0 ? null : { at, unit: null };
  };
  const [x, y] = [placeOf('x'), placeOf('y')];
  if (x === null || y === null) throw new RangeError(`columns: expected x and y, found ${order}`);
  return { x, y, z: placeOf('z'), label: placeOf('label'), remark: placeOf('remark') };
};

/** A name or number and two coordinates, with a height behind them, or none and a remark. */
const isSurveyed = (cells: readonly string[]): boolean =>
  isNumber(cells[1]) &&
  isNumber(cells[2]) &&
  (!isNumber(cells[0]) || isNumber(cells[3]) || (cells.length > 4 && isBlank(cells[3])));

/**
 * The columns of a file whose first row is a point already, in the order that is given. Without one:
 * name, north, east, height and remark where a name or number stands before the coordinates, as total
 * stations write them (common practice, no published source); else x, y, z and a name. Null for a
 * heading.
 */
export const bareColumns = ({ cells }: CsvRow, order: PointOrder | null): PointColumns | null => {
  const numbers = cells.map(isNumber);
  if (order !== null) {
    const columns = inOrder(order);
    return numbers[columns.x.at] === true && numbers[columns.y.at] === true ? columns : null;
  }
  if (isSurveyed(cells)) return inOrder('name, y, x, z, remark');
  const first = numbers.indexOf(false);
  const leading = first < 0 ? numbers.length : first;
  return leading === 2 || leading === 3 ? inOrder('x, y, z, name') : null;
};

/**
 * Where a header's columns stand, in any order, other columns between them or not. Unread with one
 * line where one that is needed is missing or one stands there twice.
 */
export const headedColumns = (
  { line, cells }: CsvRow,
  heights: 'needed' | 'if any',
): Parsed<PointColumns> => {
  const found = cells.map(headingOf);
  const placeOf = (column: PointColumn): PointPlace | null => {
    const at = found.findIndex((one) => one?.column === column);
    return at < 0 ? null : { at, unit: found[at]?.unit ?? null };
  };
  const twice = usual.find((column) => found.filter((one) => one?.column === column).length > 1);
  if (twice !== undefined) return unread(phrase`line ${line}: expected one column for ${twice}`);
  const [x, y, z] = [placeOf('x'), placeOf('y'), placeOf('z')];
  if (x !== null && y !== null && (z !== null || heights === 'if any')) {
    return read({ x, y, z, label: placeOf('label'), remark: placeOf('remark') });
  }
  const missing =
    x === null ? phrase`x or east` : y === null ? phrase`y or north` : phrase`z or elevation`;
  return unread(
    phrase`line ${line}: expected a column for ${missing}, with a unit of ft, in, m, cm, mm or none; found ${quotedText(cells.join(', '))}`,
  );
};
