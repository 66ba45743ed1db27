import { hardwareSchema, type Hardware } from '../../site/hardware.ts';
import type { BookCells } from './bookTable.ts';
import { issueLine } from '../../site/issueLine.ts';
import { measuredPart } from '../../site/measuredPart.ts';
import { partFault, type PartWords } from '../../site/partFault.ts';
import { untoldPart } from '../../site/untold.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { parseLength } from '../../units/parseLength.ts';
import { parseLengths } from '../../units/parseLengths.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import type { BookColumn } from '../../exporters/csv/bookColumns.ts';
import { exactText } from '../../exporters/csv/exactText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The cells of a row by their columns; a column that the file does not have is not there. */
export type PartCells = BookCells<BookColumn>;

const words: PartWords = {
  low: 'Low',
  planned: 'Planned',
  high: 'High',
  postLow: 'Post from',
  postHigh: 'Post to',
  frameLow: 'Frame from',
  frameHigh: 'Frame to',
  pin: 'Pin',
  readings: 'Readings',
  write: exactText,
};

/** Stops the reading of a row; never leaves `readBookRow`. */
class Refusal extends Error {}

const refuse = (line: string): never => {
  throw new Refusal(line);
};

const must = <T>(column: BookColumn, parsed: Parsed<T>): T =>
  parsed.ok ? parsed.value : refuse(`${column}: ${parsed.reason}`);

/** The length in a cell; null in an empty one; `old` where the file has no such column. */
const lengthIn = (cells: PartCells, column: BookColumn, old: Inches | null): Inches | null => {
  const cell = cells[column];
  if (cell === undefined) return old;
  return cell.trim() === '' ? null : must(column, parseLength(cell));
};

const choiceIn = <T extends string>(
  cells: PartCells,
  column: BookColumn,
  choices: readonly [T, ...T[]],
  old: T,
): T => {
  const cell = cells[column]?.trim().toLowerCase() ?? '';
  if (cell === '') return old;
  return (
    choices.find((choice) => choice === cell) ??
    refuse(phrase`${column}: expected ${choices.join(phrase` or `)}, found ${quotedText(cell)}`)
  );
};

/** What kind of part a row is of. */
export const kindIn = (cells: PartCells): Parsed<Hardware['kind']> => {
  const kinds = ['hinge', 'latch', 'drop rod', 'closer'] as const;
  const cell = cells.Kind?.trim().toLowerCase() ?? '';
  const kind = kinds.find((one) => one === cell);
  if (kind !== undefined) return read(kind);
  return unread(
    phrase`Kind: expected ${kinds.join(phrase` or `)}, found ${quotedText(cells.Kind ?? '')}`,
  );
};

const rangeIn = (
  cells: PartCells,
  ends: readonly [BookColumn, BookColumn],
  old: Hardware['fits']['post'],
): Hardware['fits']['post'] => {
  const [low, high] = [
    lengthIn(cells, ends[0], old?.low ?? null),
    lengthIn(cells, ends[1], old?.high ?? null),
  ];
  if (low === null && high === null) return null;
  if (low !== null && high !== null) return { low, high };
  return refuse(phrase`${low === null ? ends[0] : ends[1]}: expected a length, found nothing`);
};

const none = inches(0);

const takesIn = (cells: PartCells, { kind, takes }: Hardware, told: boolean): Hardware['takes'] => {
  const old = told ? takes : { low: null, planned: null, high: null };
  const low = lengthIn(cells, 'Low', old.low);
  const high = lengthIn(cells, 'High', old.high);
  const planned = lengthIn(cells, 'Planned', old.planned) ?? (kind === 'hinge' ? high : null);
  if (kind === 'closer') return { low: low ?? none, planned: planned ?? none, high: high ?? none };
  return {
    low: low ?? refuse(phrase`Low: expected a length, found nothing`),
    planned: planned ?? refuse(phrase`Planned: expected a length, found nothing`),
    high: high ?? refuse(phrase`High: expected a length, found nothing`),
  };
};

const readingsIn = (cells: PartCells, old: Hardware['readings']): readonly Inches[] => {
  const cell = cells.Readings;
  if (cell === undefined) return old;
  if (cell.trim() === '') return [];
  return must('Readings', parseLengths(cell)).toSorted((a, b) => a - b);
};

/** Whether a row leaves what the part takes to its readings. */
const byReadings = ({ Low, Planned, High, Readings = '' }: PartCells): boolean =>
  Readings.trim() !== '' && [Low, Planned, High].every((cell = '') => cell.trim() === '');

const partIn = (cells: PartCells, old: Hardware | null): Hardware => {
  const kind = must('Kind', kindIn(cells));
  const base: Hardware = old ?? {
    ...untoldPart,
    kind,
    label: '',
    takes: { low: none, planned: none, high: none },
    from: 'book',
  };
  const on = cells.Day?.trim() ?? base.on;
  const part: Hardware = {
    kind,
    label: cells.Name?.trim() ?? base.label,
    takes: base.takes,
    spread: choiceIn(cells, 'Spread', ['uncertain', 'adjustable'], base.spread),
    from: choiceIn(cells, 'Known from', ['measured', 'book', 'assumed'], base.from),
    on,
    readings: readingsIn(cells, base.readings),
    fits: {
      post: rangeIn(cells, ['Post from', 'Post to'], base.fits.post),
      frame: rangeIn(cells, ['Frame from', 'Frame to'], base.fits.frame),
    },
    pin: lengthIn(cells, 'Pin', base.pin),
    remark: cells.Remark ?? base.remark,
  };
  if (kind !== 'closer' && byReadings(cells)) return measuredPart(part, part.readings, on) ?? part;
  return { ...part, takes: takesIn(cells, part, old !== null) };
};

/**
 * Reads one row of a book's file. What the file has no column for is taken from `old`, the part of
 * the book that the row changes; null for a new one. A row with readings and none of the three
 * sizes takes what was read. Unread with one line that names the column.
 */
export const readBookRow = (cells: PartCells, old: Hardware | null): Parsed<Hardware> => {
  try {
    const part = partIn(cells, old);
    const fault = partFault(part, words);
    if (fault !== null) return unread(fault);
    const checked = hardwareSchema.safeParse(part);
    return checked.success ? read(part) : unread(issueLine(checked.error, part, []));
  } catch (error) {
    if (error instanceof Refusal) return unread(error.message);
    throw error;
  }
};
