import { inches, type Inches } from '../../units/inches.ts';
import { parseLength } from '../../units/parseLength.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { inchesIn, type FileUnit } from '../fileUnit.ts';
import { labelText } from '../labelText.ts';
import type { PointColumns, PointPlace } from './pointColumns.ts';
import type { CsvRow } from './readCsv.ts';
import { phrase } from '../../phrases/phrase.ts';

/** One point of a file, inches: x east, y north, z up where the file has its height. */
export interface PointRow {
  readonly name: string;
  readonly x: Inches;
  readonly y: Inches;
  readonly z: Inches | null;
}

/** In what numbers are read that name no unit, and the mark before their decimals. */
export interface NumberForm {
  readonly unit: FileUnit;
  readonly decimal: '.' | ',';
}

/** A number alone, such as surveyors' programs write. */
const bareNumber = /^([-+]?)(\d+(?:\.\d*)?|\.\d+)$/;

/** Written out for `parseLength`, which converts metres to the last bit. */
const marks: Readonly<Partial<Record<FileUnit, string>>> = {
  feet: 'ft',
  inches: 'in',
  metres: 'm',
  centimetres: 'cm',
  millimetres: 'mm',
};

const lengthIn = (cell: string, unit: FileUnit, decimal: '.' | ','): Parsed<Inches> => {
  const text = decimal === ',' ? cell.trim().replace(',', '.') : cell.trim();
  const number = bareNumber.exec(text);
  if (number === null) return parseLength(text.replace(/^\+/, ''), 'decimal feet');
  const [, sign = '', size = ''] = number;
  const mark = marks[unit];
  if (mark !== undefined) return parseLength(`${sign === '-' ? '-' : ''}${size} ${mark}`);
  return read(inches((sign === '-' ? -1 : 1) * Number(size) * inchesIn[unit]));
};

const cellIn = (row: CsvRow, axis: string, place: PointPlace, form: NumberForm): Parsed<Inches> => {
  const cell = row.cells[place.at] ?? '';
  const found = lengthIn(cell, place.unit ?? form.unit, form.decimal);
  return found.ok ? found : unread(phrase`${axis}: expected a number, found ${quotedText(cell)}`);
};

/** Reads one row of points; unread with one line that names the column. An empty height is none. */
export const readPointRow = (
  row: CsvRow,
  columns: PointColumns,
  form: NumberForm,
): Parsed<PointRow> => {
  const x = cellIn(row, 'x', columns.x, form);
  if (!x.ok) return x;
  const y = cellIn(row, 'y', columns.y, form);
  if (!y.ok) return y;
  const height = columns.z !== null && (row.cells[columns.z.at] ?? '').trim() !== '';
  const z = height && columns.z !== null ? cellIn(row, 'z', columns.z, form) : read(null);
  if (!z.ok) return z;
  const textOf = (place: PointPlace | null) => (place === null ? '' : (row.cells[place.at] ?? ''));
  const name = labelText(`${textOf(columns.label)} ${textOf(columns.remark)}`);
  return read({ name, x: x.value, y: y.value, z: z.value });
};
