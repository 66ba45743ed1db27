import type { Hardware } from '../../site/hardware.ts';
import { hardwareId, type HardwareId } from '../../site/ids.ts';
import type { Parts } from '../../site/parts.ts';
import { kept } from '../../site/kept.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { bookColumns, keyColumn, type BookColumn } from '../../exporters/csv/bookColumns.ts';
import { kindIn, readBookRow, type BookCells } from './readBookRow.ts';
import { readCsv, type CsvRow } from '../csv/readCsv.ts';

/** One row that can be taken, and the line on which it begins. */
export interface TakenRow {
  readonly line: number;
  readonly id: HardwareId;
  readonly hardware: Hardware;
}

/** What a file would do to a book, before it is let. */
export interface BookImport {
  readonly added: readonly TakenRow[];
  readonly changed: readonly TakenRow[];
  /** How many parts the book has already as the file has them. */
  readonly same: number;
  /** Rows that cannot be taken, each with one line that says why. */
  readonly refused: readonly { readonly line: number; readonly reason: string }[];
  /** Columns that the book has no place for. */
  readonly leftOut: readonly string[];
}

/** The book that the rows are for, and ids for parts that have none; each call gives a new one. */
export interface BookImportInto {
  readonly book: Parts;
  readonly freshId: () => HardwareId;
}

const columns: readonly BookColumn[] = [...bookColumns.map(({ name }) => name), keyColumn];
/** Every form of a book's file has at least these. */
const needed: readonly BookColumn[] = ['Kind', 'Name'];

const columnNamed = (heading: string): BookColumn | undefined =>
  columns.find((name) => name.toLowerCase() === heading.trim().toLowerCase());

const headerFault = (header: CsvRow): string | null => {
  const found = header.cells.map(columnNamed);
  const missing = needed.filter((name) => !found.includes(name));
  if (missing.length > 0) {
    return `line ${header.line}: expected a header with the columns ${columns.join(', ')}; found ${quotedText(header.cells.join(', '))}`;
  }
  const twice = found.find((name, n) => name !== undefined && found.indexOf(name) !== n);
  return twice === undefined ? null : `line ${header.line}: expected the column ${twice} once`;
};

const cellsOf = (header: CsvRow, row: CsvRow): BookCells =>
  Object.fromEntries(
    header.cells.flatMap((heading, n) => {
      const name = columnNamed(heading);
      return name === undefined ? [] : [[name, row.cells[n] ?? '']];
    }),
  );

/** The part of the book that a row speaks of: by its key, else by kind and name; null for a new one. */
const meantBy = (cells: BookCells, { book, freshId }: BookImportInto): Parsed<HardwareId> => {
  const key = cells.Key?.trim() ?? '';
  if (key !== '') {
    const id = hardwareId.safeParse(`hardware:${key}`);
    if (id.success) return read(id.data as HardwareId);
    return unread(`Key: expected up to 40 letters, digits and hyphens, found ${quotedText(key)}`);
  }
  const kind = kindIn(cells);
  if (!kind.ok) return kind;
  const name = cells.Name?.trim().toLowerCase();
  const [first, second] = Object.entries<Hardware>(book)
    .filter(([, part]) => part.kind === kind.value && part.label.trim().toLowerCase() === name)
    .map(([id]) => id as HardwareId);
  if (second === undefined) return read(first ?? freshId());
  return unread(`Name: the book has more than one ${quotedText(cells.Name ?? '')}: expected a Key`);
};

const readRow = (header: CsvRow, row: CsvRow, into: BookImportInto): Parsed<TakenRow> => {
  const [due, found] = [header.cells.length, row.cells.length];
  if (due !== found) return unread(`expected ${due} cells as in the header, found ${found}`);
  const cells = cellsOf(header, row);
  const id = meantBy(cells, into);
  if (!id.ok) return id;
  const old = Object.hasOwn(into.book, id.value) ? into.book[id.value] : undefined;
  const kind = kindIn(cells);
  if (!kind.ok) return kind;
  if (old !== undefined && old.kind !== kind.value) {
    return unread(`Kind: expected ${old.kind} as the book has it, found ${kind.value}`);
  }
  const part = readBookRow(cells, old ?? null);
  return part.ok ? read({ line: row.line, id: id.value, hardware: part.value }) : part;
};

const readRows = (header: CsvRow, rows: readonly CsvRow[], into: BookImportInto) => {
  const taken = new Map<HardwareId, TakenRow>();
  const refused: { line: number; reason: string }[] = [];
  for (const row of rows) {
    const found = readRow(header, row, into);
    const before = found.ok ? taken.get(found.value.id) : undefined;
    if (!found.ok) refused.push({ line: row.line, reason: found.reason });
    else if (before === undefined) taken.set(found.value.id, found.value);
    else refused.push({ line: row.line, reason: `the same part as in line ${before.line}` });
  }
  return { taken: [...taken.values()], refused };
};

/**
 * What the comma-separated text of a book would add to `into.book` or change in it. The columns may
 * stand in any order; a part that the file does not name stays as it is. Unread with one line for a
 * text that is no such file.
 */
export const bookFromCsv = (text: string, into: BookImportInto): Parsed<BookImport> => {
  const all = readCsv(text);
  if (!all.ok) return all;
  const [header, ...rows] = all.value;
  if (header === undefined) return unread('line 1: expected a header, found an empty file');
  const fault = headerFault(header);
  if (fault !== null) return unread(fault);
  const { taken, refused } = readRows(header, rows, into);
  const isNew = ({ id }: TakenRow) => !Object.hasOwn(into.book, id);
  const known = taken.filter((row) => !isNew(row));
  const changed = known.filter(({ id, hardware }) => {
    const old = into.book[id];
    return kept(old, hardware) !== old;
  });
  return read({
    added: taken.filter(isNew),
    changed,
    same: known.length - changed.length,
    refused,
    leftOut: header.cells.filter((heading) => columnNamed(heading) === undefined),
  });
};
