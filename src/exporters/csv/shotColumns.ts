import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { CsvRow } from './readCsv.ts';

/** What a file of grade shots has of each. */
export type ShotColumn = 'x' | 'y' | 'z' | 'label';

/** Units that a heading can name, as `parseLength` reads them behind a number. */
export type ShotUnit = 'ft' | 'in' | 'm' | 'cm' | 'mm';

/** One column: where it stands, and the unit of its bare numbers; null where none is named. */
export interface ShotPlace {
  readonly at: number;
  readonly unit: ShotUnit | null;
}

/** Where the columns of a file stand; a file may be without names. */
export interface ShotColumns {
  readonly x: ShotPlace;
  readonly y: ShotPlace;
  readonly z: ShotPlace;
  readonly label: ShotPlace | null;
}

const names: Readonly<Record<ShotColumn, readonly string[]>> = {
  x: ['x', 'e', 'east', 'easting'],
  y: ['y', 'n', 'north', 'northing'],
  z: ['z', 'h', 'height', 'elev', 'elevation', 'level'],
  label: ['label', 'name', 'point', 'description', 'note'],
};

const units: Readonly<Record<ShotUnit, readonly string[]>> = {
  ft: ['ft', 'feet', 'foot'],
  in: ['in', 'inch', 'inches'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  cm: ['cm'],
  mm: ['mm'],
};

const keyOf = <Key extends string>(
  map: Readonly<Record<Key, readonly string[]>>,
  word: string,
): Key | undefined => (Object.keys(map) as Key[]).find((key) => map[key].includes(word));

/** A heading: its column, and its unit, such as `x_ft`, `E (m)` or `height, mm`. */
const headingOf = (text: string): { column: ShotColumn; unit: ShotUnit | null } | null => {
  const [name = '', unit, ...more] = text.toLowerCase().match(/[a-z]+/g) ?? [];
  const column = keyOf(names, name);
  const named = unit === undefined ? null : keyOf(units, unit);
  return column === undefined || named === undefined || more.length > 0
    ? null
    : { column, unit: named };
};

const usual = ['x', 'y', 'z', 'label'] as const;
const isNumber = (cell: string): boolean => /^[-+]?[\d.]/.test(cell.trim());

/** The columns of a file whose first row is a shot already: x, y, z and a name. */
export const bareColumns = ({ cells }: CsvRow): ShotColumns | null => {
  if (cells.length < 3 || !cells.slice(0, 3).every(isNumber)) return null;
  const at = (n: number): ShotPlace => ({ at: n, unit: null });
  return { x: at(0), y: at(1), z: at(2), label: cells.length > 3 ? at(3) : null };
};

/**
 * Where a header's columns stand, in any order, other columns between them or not. Unread with one
 * line where one of x, y and z is missing or stands there twice.
 */
export const shotColumns = ({ line, cells }: CsvRow): Parsed<ShotColumns> => {
  const found = cells.map(headingOf);
  const placeOf = (column: ShotColumn): ShotPlace | null => {
    const at = found.findIndex((one) => one?.column === column);
    return at < 0 ? null : { at, unit: found[at]?.unit ?? null };
  };
  const twice = usual.find((column) => found.filter((one) => one?.column === column).length > 1);
  if (twice !== undefined) return unread(`line ${line}: expected one column for ${twice}`);
  const [x, y, z] = [placeOf('x'), placeOf('y'), placeOf('z')];
  if (x !== null && y !== null && z !== null) return read({ x, y, z, label: placeOf('label') });
  const missing = x === null ? 'x or east' : y === null ? 'y or north' : 'z or elevation';
  return unread(
    `line ${line}: expected a column for ${missing}, with a unit of ft, in, m, cm, mm or none; found ${quotedText(cells.join(', '))}`,
  );
};
