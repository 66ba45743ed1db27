import { hardwareSchema, partVersion, type Hardware } from '../site/hardware.ts';
import { hardwareId, type HardwareId } from '../site/ids.ts';
import { kept } from '../site/kept.ts';
import type { Parts } from '../site/parts.ts';
import type { BookShelf } from './bookShelf.ts';
import { withChange, type BookChange, type BookStore } from './bookStore.ts';
import { told } from './told.ts';

/** An entry as the device keeps it: of which version of a part; null for one taken out. */
interface KeptEntry {
  readonly version: number;
  readonly part: Hardware | null;
}

/** What a shelf holds of the book. `trouble` is one line when something cannot be read. */
export interface KeptBook {
  readonly parts: Parts;
  readonly trouble: string | null;
}

const entryOf = (value: unknown): KeptEntry | null => {
  if (typeof value !== 'object' || value === null) return null;
  const [version, part]: unknown[] = [Reflect.get(value, 'version'), Reflect.get(value, 'part')];
  if (version !== partVersion) return null;
  if (part === null) return { version, part };
  const read = hardwareSchema.safeParse(part);
  return read.success ? { version, part: read.data } : null;
};

const readEntries = (shelved: ReadonlyMap<string, unknown>) => {
  const change: Record<HardwareId, Hardware | null> = {};
  let unreadable = 0;
  for (const [key, value] of shelved) {
    const entry = hardwareId.safeParse(key).success ? entryOf(value) : null;
    if (entry === null) unreadable += 1;
    else change[key as HardwareId] = entry.part;
  }
  return { change, unreadable };
};

const readBook = (shelved: ReadonlyMap<string, unknown>, generic: Parts): KeptBook => {
  const { change, unreadable } = readEntries(shelved);
  const parts = withChange(generic, change);
  if (unreadable === 0) return { parts, trouble: null };
  const entries = unreadable === 1 ? '1 entry' : `${unreadable} entries`;
  const trouble = `The hardware book kept on this device has ${entries} that this program cannot read; they stay there.`;
  return { parts, trouble };
};

/**
 * Reads the book that the device has kept: its entries over the generic ones, less those that were
 * taken out. Never throws; an empty shelf is no trouble.
 */
export const loadBook = async (shelf: BookShelf, generic: Parts): Promise<KeptBook> => {
  try {
    return readBook(await shelf.readAll(), generic);
  } catch (error) {
    const trouble = `The hardware book could not be read from this device: ${told(error)}`;
    return { parts: generic, trouble };
  }
};

/** Which entries differ between two books, as the later has them; null for one that it lacks. */
const changeBetween = (before: Parts, after: Parts): BookChange => {
  const names = new Set([...Object.keys(before), ...Object.keys(after)] as HardwareId[]);
  const differing = [...names].filter((id) => before[id] !== after[id]);
  return Object.fromEntries(differing.map((id) => [id, after[id] ?? null]));
};

/** The book to be kept, where, what it starts with, and whom to tell of a failure. */
export interface BookKeeping {
  readonly shelf: BookShelf;
  readonly book: BookStore;
  readonly generic: Parts;
  readonly say: (line: string) => void;
}

/** Keeps a book; `refresh` takes over what other tabs have written. */
export interface BookKeeper {
  readonly now: () => Promise<void>;
  readonly refresh: () => Promise<void>;
  readonly stop: () => void;
}

/**
 * Writes the entries that were changed, and no others, at every change, undo and redo: of two tabs
 * the last to write an entry has it, and neither touches what the other wrote elsewhere. Never
 * throws: the first failure in a row is told as one line, and what was not written is tried again
 * with the next change.
 */
export const keepBook = ({ shelf, book, generic, say }: BookKeeping): BookKeeper => {
  /** What the shelf holds, as far as this tab knows. */
  let shelved = book.getState().parts;
  let queue: Promise<void> = Promise.resolve();
  let failing = false;
  const write = async (): Promise<void> => {
    const { parts } = book.getState();
    const change = changeBetween(shelved, parts);
    const values = Object.entries<Hardware | null>(change).map(
      ([id, part]): [string, KeptEntry] => [id, { version: partVersion, part }],
    );
    if (values.length === 0) return;
    await shelf.write(Object.fromEntries(values));
    shelved = parts;
    failing = false;
  };
  const read = async (): Promise<void> => {
    const fresh = readBook(await shelf.readAll(), generic).parts;
    const { parts } = book.getState();
    // what this tab has not yet written is newer than what was read
    const own = changeBetween(shelved, parts);
    shelved = kept(parts, fresh);
    book.getState().receive(kept(parts, withChange(shelved, own)));
  };
  // one after the other, so that no reading undoes a writing
  const line = (deed: () => Promise<void>, fault: string): Promise<void> => {
    queue = queue.then(deed).catch((error: unknown) => {
      if (!failing) say(`${fault}: ${told(error)}`);
      failing = true;
    });
    return queue;
  };
  const now = () => line(write, 'The hardware book is not being kept on the device');
  const stop = book.subscribe((state, before) => {
    if (state.parts !== before.parts) void now();
  });
  const refresh = () => line(read, 'The hardware book could not be read from this device');
  return { now, refresh, stop };
};
