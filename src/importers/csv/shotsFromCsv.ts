import { farthest } from '../../geometry/tolerance.ts';
import type { Shot } from '../../site/shot.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { FileUnit } from '../fileUnit.ts';
import { usualUnit } from '../usualUnit.ts';
import { bareColumns, headedColumns, type PointColumns } from './pointColumns.ts';
import { orderText } from './orderText.ts';
import { readCsv, type CsvRow } from './readCsv.ts';
import { readPointRow } from './readPointRow.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a file has of grade shots, before they are let. */
export interface ShotImport {
  readonly taken: readonly { readonly line: number; readonly shot: Shot }[];
  /** How many of its shots the site has already, at their place and height. */
  readonly same: number;
  /** Rows that cannot be taken, each with one line that says why. */
  readonly refused: readonly { readonly line: number; readonly reason: string }[];
  /**
   * In what its numbers were read, such as `feet, as this yard is measured`, and in what order its
   * columns, where they have no headings.
   */
  readonly units: string;
}

/** The site that the shots are for: its shots, and how its lengths are written. */
export interface ShotImportInto {
  readonly shots: readonly Shot[];
  readonly system: LengthSystem;
}

const axes = ['x', 'y', 'z'] as const;

const readRow = (row: CsvRow, columns: PointColumns, unit: FileUnit): Parsed<Shot> => {
  const point = readPointRow(row, columns, { unit, decimal: '.' });
  if (!point.ok) return point;
  const { x, y, z, name } = point.value;
  if (z === null) return unread(phrase`z: expected a number, found “”`);
  const far = axes.find((axis) => Math.abs(point.value[axis] ?? 0) > farthest);
  if (far === undefined) return read({ x, y, z, label: name });
  const cell = row.cells[columns[far]?.at ?? -1] ?? '';
  return unread(phrase`${far}: expected at most 10 miles from 0, found ${quotedText(cell)}`);
};

const keyOf = ({ x, y, z }: Shot): string => `${x} ${y} ${z}`;

const unitsText = (columns: PointColumns, bare: FileUnit): string => {
  const told = axes.map((axis) => columns[axis]?.unit ?? null);
  const all = [...new Set(told.map((unit) => unit ?? bare))].join(phrase` and `);
  if (told.every((unit) => unit !== null)) return phrase`${all}, as the headings say`;
  return told.every((unit) => unit === null)
    ? phrase`${all}, as this yard is measured`
    : phrase`${all}, as the headings say or this yard is measured`;
};

/**
 * The grade shots in comma-separated text: columns x, y, z and a name in this order, or name, north,
 * east, height and remark where there are five, or in any order under headings (x or east, y or north, z or elevation, name). A unit that a heading or a
 * cell names counts; other numbers are feet, or metres on a metric site. Unread with one line for a
 * text that is no such file; a row that cannot be taken is told by its line, the others can be.
 */
export const shotsFromCsv = (text: string, into: ShotImportInto): Parsed<ShotImport> => {
  const all = readCsv(text);
  if (!all.ok) return all;
  const [first] = all.value;
  if (first === undefined) return unread(phrase`line 1: expected grade shots, found an empty file`);
  const bare = bareColumns(first, null);
  const columns = bare === null ? headedColumns(first, 'needed') : read(bare);
  if (!columns.ok) return columns;
  const unit = usualUnit(into.system);
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
  const order =
    bare === null ? '' : phrase`, columns without headings taken as ${orderText(bare, first)}`;
  return read({ taken, same, refused, units: `${unitsText(columns.value, unit)}${order}` });
};
