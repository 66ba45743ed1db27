import { openDB } from 'idb';

/** The place on the device that holds a book, entry by entry. Each may fail by rejecting. */
export interface BookShelf {
  /** Everything kept, by key. */
  readonly readAll: () => Promise<ReadonlyMap<string, unknown>>;
  /** Writes these values and leaves the others as they are: all or nothing. */
  readonly write: (values: Readonly<Record<string, unknown>>) => Promise<void>;
}

/** Where in the browser's IndexedDB a book lies. */
export interface BookPlace {
  readonly chest: string;
  readonly drawer: string;
}

// chests of their own: no site, no other book, and no trouble with one, can touch a book
export const bookPlaces = {
  hardware: { chest: 'lathline-book', drawer: 'parts' },
  townRules: { chest: 'lathline-town-rules', drawer: 'rules' },
} as const satisfies Record<string, BookPlace>;

/** The shelf of a book in the browser's IndexedDB. Opened at each use, so that a failure can pass. */
export const deviceBookShelf = ({ chest, drawer }: BookPlace): BookShelf => {
  const open = () =>
    openDB(chest, 1, {
      upgrade: (db) => {
        db.createObjectStore(drawer);
      },
    });
  return {
    readAll: async () => {
      const db = await open();
      try {
        const { store } = db.transaction(drawer);
        const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
        return new Map(keys.map((key, n) => [String(key), values[n] as unknown]));
      } finally {
        db.close();
      }
    },
    write: async (values) => {
      const db = await open();
      try {
        const deal = db.transaction(drawer, 'readwrite');
        const puts = Object.entries(values).map(([key, value]) => deal.store.put(value, key));
        await Promise.all([...puts, deal.done]);
      } finally {
        db.close();
      }
    },
  };
};
