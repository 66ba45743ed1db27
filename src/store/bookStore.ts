import { createStore } from 'zustand/vanilla';
import { checked } from '../site/checked.ts';
import { hardwareSchema, type Hardware } from '../site/hardware.ts';
import { hardwareId, type HardwareId } from '../site/ids.ts';
import { kept } from '../site/kept.ts';
import { limits } from '../site/limits.ts';
import type { Parts } from '../site/parts.ts';

/** Entries of the book to be written; null takes one out. */
export type BookChange = Readonly<Record<HardwareId, Hardware | null>>;

/** A change that was made, with what was there before it. */
export interface BookStep {
  readonly label: string;
  readonly before: BookChange;
  readonly after: BookChange;
}

/** The company's hardware book with its own history, and the only ways to change it. */
export interface BookState {
  readonly parts: Parts;
  /** Oldest first. */
  readonly past: readonly BookStep[];
  /** What undo took back, the next to be done again first. */
  readonly future: readonly BookStep[];
  /** RangeError of one line for a wrong id or part, and for one too many; nothing is changed then. */
  readonly change: (label: string, change: BookChange) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Takes over what another tab wrote; no step of this history. */
  readonly receive: (parts: Parts) => void;
}

const ids = (change: BookChange): HardwareId[] => Object.keys(change) as HardwareId[];

const at = (parts: Parts, id: HardwareId): Hardware | null =>
  (Object.hasOwn(parts, id) ? parts[id] : undefined) ?? null;

/** A book with these entries written or taken out; all others stay. */
export const withChange = (parts: Parts, change: BookChange): Parts => {
  const rest = Object.entries<Hardware>(parts).filter(([id]) => !Object.hasOwn(change, id));
  const written = ids(change).flatMap((id) => {
    const part = change[id] ?? null;
    return part === null ? [] : [[id, part] as const];
  });
  return Object.fromEntries([...rest, ...written]);
};

const checkedChange = (parts: Parts, change: BookChange): BookChange =>
  Object.fromEntries(
    ids(change).flatMap((id): readonly (readonly [HardwareId, Hardware | null])[] => {
      const old = at(parts, id);
      const part = change[id] ?? null;
      if (part === null) return old === null ? [] : [[id, null]];
      checked(hardwareId, id, ['book']);
      const fresh = kept(old, checked(hardwareSchema, part, ['book', id]));
      return fresh === old ? [] : [[id, fresh]];
    }),
  );

const grownTooLarge = (parts: Parts): RangeError | null => {
  const count = Object.keys(parts).length;
  if (count <= limits.hardware) return null;
  return new RangeError(`book: expected at most ${limits.hardware} entries, found ${count}`);
};

const stepTo = (parts: Parts, label: string, after: BookChange): BookStep => ({
  label,
  before: Object.fromEntries(ids(after).map((id) => [id, at(parts, id)])),
  after,
});

type Told = Pick<BookState, 'parts' | 'past' | 'future'>;

const changed = (state: Told, label: string, change: BookChange): Told => {
  const fresh = checkedChange(state.parts, change);
  if (ids(fresh).length === 0) return state;
  const parts = withChange(state.parts, fresh);
  const tooLarge = grownTooLarge(parts);
  if (tooLarge !== null) throw tooLarge;
  return { parts, past: [...state.past, stepTo(state.parts, label, fresh)], future: [] };
};

const undone = (state: Told): Told => {
  const last = state.past.at(-1);
  if (last === undefined) return state;
  return {
    parts: withChange(state.parts, last.before),
    past: state.past.slice(0, -1),
    future: [last, ...state.future],
  };
};

const redone = (state: Told): Told => {
  const [next, ...future] = state.future;
  if (next === undefined) return state;
  return { parts: withChange(state.parts, next.after), past: [...state.past, next], future };
};

/**
 * The store of one book. Undo goes back entry by entry, so that what another tab wrote meanwhile to
 * other entries stays.
 */
export const createBookStore = (parts: Parts) =>
  createStore<BookState>()((set) => ({
    parts,
    past: [],
    future: [],
    change: (label, change) => set((state) => changed(state, label, change)),
    undo: () => set(undone),
    redo: () => set(redone),
    receive: (fresh) => set((state) => (state.parts === fresh ? state : { parts: fresh })),
  }));

export type BookStore = ReturnType<typeof createBookStore>;
