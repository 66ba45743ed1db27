import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { readCsv, type CsvRow } from '../csv/readCsv.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The cells of a row by the columns that the file has. */
export type BookCells<Column extends string> = Readonly<Partial<Record<Column, string>>>;

/** The rows of a book's file, each with the line on which it begins. */
export interface BookTable<Column extends string> {
  /** Unread: a row that has not as many cells as the header. */
  readonly rows: readonly { readonly line: number; readonly cells: Parsed<BookCells<Column>> }[];
  /** Columns that the book has no place for. */
  readonly leftOut: readonly string[];
}

/** The columns of a book, and those that every form of its file has. */
export interface BookColumns<Column extends string> {
  readonly all: readonly Column[];
  readonly needed: readonly Column[];
}

const columnNamed = <Column extends string>(
  heading: string,
  { all }: BookColumns<Column>,
): Column | undefined => all.find((name) => name.toLowerCase() === heading.trim().toLowerCase());

const headerFault = <Column extends string>(
  header: CsvRow,
  columns: BookColumns<Column>,
): string | null => {
  const found = header.cells.map((heading) => columnNamed(heading, columns));
  if (columns.needed.some((name) => !found.includes(name))) {
    return phrase`line ${header.line}: expected a header with the columns ${columns.all.join(', ')}; found ${quotedText(header.cells.join(', '))}`;
  }
  const twice = found.find((name, n) => name !== undefined && found.indexOf(name) !== n);
  return twice === undefined
    ? null
    : phrase`line ${header.line}: expected the column ${twice} once`;
};

/** A column of the book, and where it stands in the file. */
interface Place<Column extends string> {
  readonly name: Column;
  readonly at: number;
}

/** A header may have any number of columns: those of the book are looked up once and not for every row. */
const placesIn = <Column extends string>(
  { cells }: CsvRow,
  columns: BookColumns<Column>,
): readonly Place<Column>[] =>
  cells.flatMap((heading, at) => {
    const name = columnNamed(heading, columns);
    return name === undefined ? [] : [{ name, at }];
  });

const cellsOf = <Column extends string>(
  row: CsvRow,
  due: number,
  named: readonly Place<Column>[],
): Parsed<BookCells<Column>> => {
  const found = row.cells.length;
  if (due !== found) return unread(phrase`expected ${due} cells as in the header, found ${found}`);
  const cells = named.map(({ name, at }) => [name, row.cells[at] ?? ''] as const);
  return read(Object.fromEntries(cells) as BookCells<Column>);
};

/**
 * The rows of a book's comma-separated text by its columns, which may stand in any order. Unread with
 * one line for a text that is no such file.
 */
export const bookTable = <Column extends string>(
  text: string,
  columns: BookColumns<Column>,
): Parsed<BookTable<Column>> => {
  const all = readCsv(text);
  if (!all.ok) return all;
  const [header, ...rows] = all.value;
  if (header === undefined) return unread(phrase`line 1: expected a header, found an empty file`);
  const fault = headerFault(header, columns);
  if (fault !== null) return unread(fault);
  const named = placesIn(header, columns);
  const known = new Set(named.map(({ at }) => at));
  return read({
    rows: rows.map((row) => ({ line: row.line, cells: cellsOf(row, header.cells.length, named) })),
    leftOut: header.cells.filter((_, at) => !known.has(at)),
  });
};
