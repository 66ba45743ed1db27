import { farthest } from '../../geometry/tolerance.ts';
import { issueLine } from '../../site/issueLine.ts';
import { shotSchema, type Shot } from '../../site/shot.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { parseLength } from '../../units/parseLength.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { readCsv, type CsvRow } from './readCsv.ts';
import { bareColumns, shotColumns, type ShotColumns, type ShotPlace } from './shotColumns.ts';

/** What a file has of grade shots, before they are let. */
export interface ShotImport {
  readonly taken: readonly { readonly line: number; readonly shot: Shot }[];
  /** How many of its shots the site has already, at their place and height. */
  readonly same: number;
  /** Rows that cannot be taken, each with one line that says why. */
  readonly refused: readonly { readonly line: number; readonly reason: string }[];
  /** In what its numbers were read, such as `feet, as this yard is`. */
  readonly units: string;
}

/** The site that the shots are for: its shots, and how its lengths are written. */
export interface ShotImportInto {
  readonly shots: readonly Shot[];
  readonly system: LengthSystem;
}

type Axis = 'x' | 'y' | 'z';
const axes: readonly Axis[] = ['x', 'y', 'z'];

/** The unit of numbers without one: nobody writes grade shots in inches or millimetres. */
const bareUnit = (system: LengthSystem): 'ft' | 'm' =>
  system === 'mm' || system === 'm' ? 'm' : 'ft';

/** A number alone, such as surveyors' programs write. */
const bareNumber = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

const lengthIn = (cell: string, unit: string): Parsed<Inches> => {
  const text = cell.trim();
  if (!bareNumber.test(text)) return parseLength(text.replace(/^\+/, ''), 'decimal feet');
  return parseLength(`${text.replace(/^\+/, '')} ${unit}`);
};

const cellIn = (row: CsvRow, axis: Axis, place: ShotPlace, unit: string): Parsed<Inches> => {
  const cell = row.cells[place.at] ?? '';
  const found = lengthIn(cell, place.unit ?? unit);
  if (!found.ok) {
    return unread(`${axis}: expected a number, found ${quotedText(cell)}`);
  }
  if (Math.abs(found.value) <= farthest) return found;
  return unread(`${axis}: expected at most 10 miles from 0, found ${quotedText(cell)}`);
};

const readRow = (row: CsvRow, columns: ShotColumns, unit: string): Parsed<Shot> => {
  const label = columns.label === null ? '' : (row.cells[columns.label.at] ?? '').trim();
  const shot = { x: 0, y: 0, z: 0 };
  for (const axis of axes) {
    const length = cellIn(row, axis, columns[axis], unit);
    if (!length.ok) return length;
    shot[axis] = length.value;
  }
  const checked = shotSchema.safeParse({ ...shot, label });
  return checked.success ? read(checked.data) : unread(issueLine(checked.error, { label }, []));
};

const keyOf = ({ x, y, z }: Shot): string => `${x} ${y} ${z}`;

const named = { ft: 'feet', in: 'inches', m: 'metres', cm: 'centimetres', mm: 'millimetres' };

const unitsText = (columns: ShotColumns, bare: 'ft' | 'm'): string => {
  const told = [columns.x, columns.y, columns.z].map(({ unit }) => unit);
  const all = [...new Set(told.map((unit) => named[unit ?? bare]))].join(' and ');
  if (told.every((unit) => unit !== null)) return `${all}, as the headings say`;
  return told.every((unit) => unit === null)
    ? `${all}, as this yard is measured`
    : `${all}, as the headings say or this yard is measured`;
};

/**
 * The grade shots in comma-separated text: columns x, y, z and a name in this order, or in any
 * order under headings (x or east, y or north, z or elevation, name). A unit that a heading or a
 * cell names counts; other numbers are feet, or metres on a metric site. Unread with one line for a
 * text that is no such file; a row that cannot be taken is told by its line, the others can be.
 */
export const shotsFromCsv = (text: string, into: ShotImportInto): Parsed<ShotImport> => {
  const all = readCsv(text);
  if (!all.ok) return all;
  const [first] = all.value;
  if (first === undefined) return unread('line 1: expected grade shots, found an empty file');
  const bare = bareColumns(first);
  const columns = bare === null ? shotColumns(first) : read(bare);
  if (!columns.ok) return columns;
  const unit = bareUnit(into.system);
  const known = new Set(into.shots.map(keyOf));
  const taken: { line: number; shot: Shot }[] = [];
  const refused: { line: number; reason: string }[] = [];
  let same = 0;
  for (const row of bare === null ? all.value.slice(1) : all.value) {
    const shot = readRow(row, columns.value, unit);
    if (!shot.ok) refused.push({ line: row.line, reason: shot.reason });
    else if (known.has(keyOf(shot.value))) same += 1;
    else taken.push({ line: row.line, shot: shot.value });
  }
  return read({ taken, same, refused, units: unitsText(columns.value, unit) });
};
