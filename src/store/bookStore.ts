import { createStore } from 'zustand/vanilla';
import { kept } from '../site/kept.ts';
import type { BookKind } from './bookKind.ts';

/** Entries of a book by their ids. */
export type BookEntries<Id extends string, Entry> = Readonly<Record<Id, Entry>>;

/** Entries of a book to be written; null takes one out. */
export type BookChange<Id extends string, Entry> = Readonly<Record<Id, Entry | null>>;

/** A change that was made, with what was there before it. */
export interface BookStep<Id extends string, Entry> {
  readonly label: string;
  readonly before: BookChange<Id, Entry>;
  readonly after: BookChange<Id, Entry>;
}

/** A book of the company with its own history, and the only ways to change it. */
export interface BookState<Id extends string, Entry> {
  readonly entries: BookEntries<Id, Entry>;
  /** Oldest first. */
  readonly past: readonly BookStep<Id, Entry>[];
  /** What undo took back, the next to be done again first. */
  readonly future: readonly BookStep<Id, Entry>[];
  /** RangeError of one line for a wrong id or entry, and for one too many; nothing is changed then. */
  readonly change: (label: string, change: BookChange<Id, Entry>) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Takes over what another tab wrote; no step of this history. */
  readonly receive: (entries: BookEntries<Id, Entry>) => void;
}

const idsOf = <Id extends string>(map: Readonly<Record<Id, unknown>>): Id[] =>
  Object.keys(map) as Id[];

const mapOf = <Id extends string, Value>(
  pairs: readonly (readonly [Id, Value])[],
): Readonly<Record<Id, Value>> => Object.fromEntries(pairs) as Record<Id, Value>;

const at = <Id extends string, Entry>(entries: BookEntries<Id, Entry>, id: Id): Entry | null =>
  Object.hasOwn(entries, id) ? entries[id] : null;

/** A book with these entries written or taken out; all others stay. */
export const withChange = <Id extends string, Entry>(
  entries: BookEntries<Id, Entry>,
  change: BookChange<Id, Entry>,
): BookEntries<Id, Entry> => {
  const rest = idsOf(entries).filter((id) => !Object.hasOwn(change, id));
  const written = idsOf(change).flatMap((id) => {
    const entry = change[id];
    return entry === null ? [] : [[id, entry] as const];
  });
  return mapOf([...rest.map((id) => [id, entries[id]] as const), ...written]);
};

type Told<Id extends string, Entry> = Pick<BookState<Id, Entry>, 'entries' | 'past' | 'future'>;

const checkedChange = <Id extends string, Entry>(
  { checkedId, checkedEntry }: BookKind<Id, Entry>,
  entries: BookEntries<Id, Entry>,
  change: BookChange<Id, Entry>,
): BookChange<Id, Entry> =>
  mapOf<Id, Entry | null>(
    idsOf(change).flatMap((id): readonly (readonly [Id, Entry | null])[] => {
      const old = at(entries, id);
      const entry = change[id];
      if (entry === null) return old === null ? [] : [[id, null]];
      checkedId(id);
      const fresh = kept(old, checkedEntry(entry, ['book', id]));
      return fresh === old ? [] : [[id, fresh]];
    }),
  );

const changed = <Id extends string, Entry>(
  kind: BookKind<Id, Entry>,
  state: Told<Id, Entry>,
  { label, change }: { readonly label: string; readonly change: BookChange<Id, Entry> },
): Told<Id, Entry> => {
  const after = checkedChange(kind, state.entries, change);
  const touched = idsOf(after);
  if (touched.length === 0) return state;
  const entries = withChange(state.entries, after);
  const count = Object.keys(entries).length;
  if (count > kind.most)
    throw new RangeError(`book: expected at most ${kind.most} entries, found ${count}`);
  const before = mapOf(touched.map((id) => [id, at(state.entries, id)] as const));
  return { entries, past: [...state.past, { label, before, after }], future: [] };
};

const undone = <Id extends string, Entry>(state: Told<Id, Entry>): Told<Id, Entry> => {
  const last = state.past.at(-1);
  if (last === undefined) return state;
  return {
    entries: withChange(state.entries, last.before),
    past: state.past.slice(0, -1),
    future: [last, ...state.future],
  };
};

const redone = <Id extends string, Entry>(state: Told<Id, Entry>): Told<Id, Entry> => {
  const [next, ...future] = state.future;
  if (next === undefined) return state;
  return { entries: withChange(state.entries, next.after), past: [...state.past, next], future };
};

/**
 * The store of one book. Undo goes back entry by entry, so that what another tab wrote meanwhile to
 * other entries stays.
 */
export const createBookStore = <Id extends string, Entry>(
  kind: BookKind<Id, Entry>,
  entries: BookEntries<Id, Entry>,
) =>
  createStore<BookState<Id, Entry>>()((set) => ({
    entries,
    past: [],
    future: [],
    change: (label, change) => set((state) => changed(kind, state, { label, change })),
    undo: () => set(undone),
    redo: () => set(redone),
    receive: (fresh) => set((state) => (state.entries === fresh ? state : { entries: fresh })),
  }));

export type BookStore<Id extends string, Entry> = ReturnType<typeof createBookStore<Id, Entry>>;
