import { kept } from '../site/kept.ts';
import type { BookKind } from './bookKind.ts';
import type { BookShelf } from './bookShelf.ts';
import { withChange, type BookChange, type BookEntries, type BookStore } from './bookStore.ts';
import { told } from './told.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a shelf holds of a book. `trouble` is one line when something cannot be read. */
export interface KeptBook<Id extends string, Entry> {
  readonly entries: BookEntries<Id, Entry>;
  readonly trouble: string | null;
}

/** The book to be kept, where, what it starts with, and whom to tell of a failure. */
export interface BookKeeping<Id extends string, Entry> {
  readonly kind: BookKind<Id, Entry>;
  readonly shelf: BookShelf;
  readonly book: BookStore<Id, Entry>;
  readonly generic: BookEntries<Id, Entry>;
  readonly say: (line: string) => void;
}

type Kept<Id extends string, Entry> = Pick<BookKeeping<Id, Entry>, 'kind' | 'shelf' | 'generic'>;

/** What `read` makes of a kept value; undefined where it refuses it. */
const readable = <Value>(read: () => Value): Value | undefined => {
  try {
    return read();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
};

/** An entry as the device keeps it: of which version; null for one taken out, undefined for none. */
const entryOf = <Id extends string, Entry>(
  { field, version, checkedEntry }: BookKind<Id, Entry>,
  value: unknown,
): Entry | null | undefined => {
  if (typeof value !== 'object' || value === null) return undefined;
  if (Reflect.get(value, 'version') !== version) return undefined;
  const entry: unknown = Reflect.get(value, field);
  return entry === null ? null : readable(() => checkedEntry(entry, []));
};

const readBook = <Id extends string, Entry>(
  { kind, generic }: Omit<Kept<Id, Entry>, 'shelf'>,
  shelved: ReadonlyMap<string, unknown>,
): KeptBook<Id, Entry> => {
  const found: [Id, Entry | null][] = [];
  for (const [key, value] of shelved) {
    const id = readable(() => kind.checkedId(key));
    const entry = id === undefined ? undefined : entryOf(kind, value);
    if (id !== undefined && entry !== undefined) found.push([id, entry]);
  }
  const change = Object.fromEntries(found) as BookChange<Id, Entry>;
  const entries = withChange(generic, change);
  const unreadable = shelved.size - found.length;
  if (unreadable === 0) return { entries, trouble: null };
  const count = unreadable === 1 ? phrase`1 entry` : phrase`${unreadable} entries`;
  const trouble = phrase`The ${kind.called} kept on this device has ${count} that this program cannot read; they stay there.`;
  return { entries, trouble };
};

/**
 * Reads the book that the device has kept: its entries over the generic ones, less those that were
 * taken out. Never throws; an empty shelf is no trouble.
 */
export const loadBook = async <Id extends string, Entry>(
  from: Kept<Id, Entry>,
): Promise<KeptBook<Id, Entry>> => {
  try {
    return readBook(from, await from.shelf.readAll());
  } catch (error) {
    const trouble = phrase`The ${from.kind.called} could not be read from this device: ${told(error)}`;
    return { entries: from.generic, trouble };
  }
};

/** Which entries differ between two books, as the later has them; null for one that it lacks. */
const changeBetween = <Id extends string, Entry>(
  before: BookEntries<Id, Entry>,
  after: BookEntries<Id, Entry>,
): BookChange<Id, Entry> => {
  const names = new Set([...Object.keys(before), ...Object.keys(after)] as Id[]);
  const differing = [...names].filter((id) => before[id] !== after[id]);
  const pairs = differing.map((id) => [id, Object.hasOwn(after, id) ? after[id] : null]);
  return Object.fromEntries(pairs) as BookChange<Id, Entry>;
};

/** Keeps a book; `refresh` takes over what other tabs have written. */
export interface BookKeeper {
  /** Whether the shelf has all of the book then. */
  readonly now: () => Promise<boolean>;
  readonly refresh: () => Promise<void>;
  readonly stop: () => void;
}

/**
 * Writes the entries that were changed, and no others, at every change, undo and redo: of two tabs
 * the last to write an entry has it, and neither touches what the other wrote elsewhere. Never
 * throws: the first failure in a row is told as one line, and what was not written is tried again
 * with the next change.
 */
export const keepBook = <Id extends string, Entry>(keeping: BookKeeping<Id, Entry>): BookKeeper => {
  const { kind, shelf, book, say } = keeping;
  /** What the shelf holds, as far as this tab knows. */
  let shelved = book.getState().entries;
  let queue: Promise<void> = Promise.resolve();
  let failing = false;
  const write = async (): Promise<void> => {
    const { entries } = book.getState();
    const change = changeBetween(shelved, entries);
    const values = Object.entries(change).map(([id, entry]) => [
      id,
      { version: kind.version, [kind.field]: entry },
    ]);
    if (values.length === 0) return;
    await shelf.write(Object.fromEntries(values) as Readonly<Record<string, unknown>>);
    shelved = entries;
    failing = false;
  };
  const read = async (): Promise<void> => {
    const fresh = readBook(keeping, await shelf.readAll()).entries;
    const { entries } = book.getState();
    // what this tab has not yet written is newer than what was read
    const own = changeBetween(shelved, entries);
    shelved = kept(entries, fresh);
    book.getState().receive(kept(entries, withChange(shelved, own)));
  };
  // one after the other, so that no reading undoes a writing
  const line = (deed: () => Promise<void>, fault: string): Promise<void> => {
    queue = queue.then(deed).catch((error: unknown) => {
      if (!failing) say(`${fault}: ${told(error)}`);
      failing = true;
    });
    return queue;
  };
  const now = async () => {
    await line(write, phrase`The ${kind.called} is not being kept on the device`);
    return Object.keys(changeBetween(shelved, book.getState().entries)).length === 0;
  };
  const stop = book.subscribe((state, before) => {
    if (state.entries !== before.entries) void now();
  });
  const refresh = () => line(read, phrase`The ${kind.called} could not be read from this device`);
  return { now, refresh, stop };
};
