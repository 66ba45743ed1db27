import { kept } from '../../site/kept.ts';
import type { Parsed } from '../../units/parsed.ts';
import type { BookCells, BookTable } from './bookTable.ts';
import { phrase } from '../../phrases/phrase.ts';

/** One row that can be taken, and the line on which it begins. */
export interface TakenRow<Id extends string, Entry> {
  readonly line: number;
  readonly id: Id;
  readonly entry: Entry;
}

/** What a file would do to a book, before it is let. */
export interface BookImport<Id extends string, Entry> {
  readonly added: readonly TakenRow<Id, Entry>[];
  readonly changed: readonly TakenRow<Id, Entry>[];
  /** How many entries the book has already as the file has them. */
  readonly same: number;
  /** Rows that cannot be taken, each with one line that says why. */
  readonly refused: readonly { readonly line: number; readonly reason: string }[];
  /** Columns that the book has no place for. */
  readonly leftOut: readonly string[];
}

/** How the rows of a file are read into a book. */
export interface BookReading<Id extends string, Entry, Column extends string> {
  readonly book: Readonly<Record<Id, Entry>>;
  /** What one row is called, such as `part`. */
  readonly called: string;
  /** The entry that a row speaks of, and what it makes of it. Unread with one line. */
  readonly readRow: (
    cells: BookCells<Column>,
  ) => Parsed<{ readonly id: Id; readonly entry: Entry }>;
}

/**
 * What the rows of a file would add to a book or change in it; of two rows for one entry the first
 * counts. An entry that the file does not name stays as it is.
 */
export const bookImport = <Id extends string, Entry, Column extends string>(
  { rows, leftOut }: BookTable<Column>,
  { book, called, readRow }: BookReading<Id, Entry, Column>,
): BookImport<Id, Entry> => {
  const taken = new Map<Id, TakenRow<Id, Entry>>();
  const refused: { line: number; reason: string }[] = [];
  for (const { line, cells } of rows) {
    const found = cells.ok ? readRow(cells.value) : cells;
    const before = found.ok ? taken.get(found.value.id) : undefined;
    if (!found.ok) refused.push({ line, reason: found.reason });
    else if (before === undefined) taken.set(found.value.id, { line, ...found.value });
    else refused.push({ line, reason: phrase`the same ${called} as in line ${before.line}` });
  }
  const all = [...taken.values()];
  const known = all.filter(({ id }) => Object.hasOwn(book, id));
  const changed = known.filter(({ id, entry }) => kept(book[id], entry) !== book[id]);
  return {
    added: all.filter(({ id }) => !Object.hasOwn(book, id)),
    changed,
    same: known.length - changed.length,
    refused,
    leftOut,
  };
};
