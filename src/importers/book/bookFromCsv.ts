import { bookColumns, keyColumn, type BookColumn } from '../../exporters/csv/bookColumns.ts';
import type { Hardware } from '../../site/hardware.ts';
import { hardwareId, type HardwareId } from '../../site/ids.ts';
import type { Parts } from '../../site/parts.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { bookImport, type BookImport } from './bookImport.ts';
import { bookTable, type BookColumns } from './bookTable.ts';
import { keyIn } from './keyIn.ts';
import { kindIn, readBookRow, type PartCells } from './readBookRow.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The book that the rows are for, and ids for parts that have none; each call gives a new one. */
export interface BookImportInto {
  readonly book: Parts;
  readonly freshId: () => HardwareId;
}

const columns: BookColumns<BookColumn> = {
  all: [...bookColumns.map(({ name }) => name), keyColumn],
  needed: ['Kind', 'Name'],
};

const idOf = (key: string): HardwareId | null => {
  const id = hardwareId.safeParse(`hardware:${key}`);
  return id.success ? (id.data as HardwareId) : null;
};

/** The part of the book that a row speaks of: by its key, else by kind and name; a new one for none. */
const meantBy = (cells: PartCells, { book, freshId }: BookImportInto): Parsed<HardwareId> => {
  const key = keyIn(cells.Key, idOf);
  if (!key.ok) return key;
  if (key.value !== null) return read(key.value);
  const kind = kindIn(cells);
  if (!kind.ok) return kind;
  const name = cells.Name?.trim().toLowerCase();
  const [first, second] = Object.entries<Hardware>(book)
    .filter(([, part]) => part.kind === kind.value && part.label.trim().toLowerCase() === name)
    .map(([id]) => id as HardwareId);
  if (second === undefined) return read(first ?? freshId());
  return unread(
    phrase`Name: the book has more than one ${quotedText(cells.Name ?? '')}: expected a Key`,
  );
};

const readRow = (
  cells: PartCells,
  into: BookImportInto,
): Parsed<{ readonly id: HardwareId; readonly entry: Hardware }> => {
  const id = meantBy(cells, into);
  if (!id.ok) return id;
  const old = Object.hasOwn(into.book, id.value) ? into.book[id.value] : undefined;
  const kind = kindIn(cells);
  if (!kind.ok) return kind;
  if (old !== undefined && old.kind !== kind.value) {
    return unread(phrase`Kind: expected ${old.kind} as the book has it, found ${kind.value}`);
  }
  const part = readBookRow(cells, old ?? null);
  return part.ok ? read({ id: id.value, entry: part.value }) : part;
};

/**
 * What the comma-separated text of a hardware book would add to `into.book` or change in it. The
 * columns may stand in any order; a part that the file does not name stays as it is. Unread with one
 * line for a text that is no such file.
 */
export const bookFromCsv = (
  text: string,
  into: BookImportInto,
): Parsed<BookImport<HardwareId, Hardware>> => {
  const table = bookTable(text, columns);
  if (!table.ok) return table;
  return read(
    bookImport(table.value, {
      book: into.book,
      called: phrase`part`,
      readRow: (cells) => readRow(cells, into),
    }),
  );
};
