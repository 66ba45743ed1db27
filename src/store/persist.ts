import { openDB, type IDBPDatabase } from 'idb';
import { openDocument } from '../site/openDocument.ts';
import type { Site } from '../site/site.ts';
import { keptOf, readKept } from './keptSession.ts';
import type { KeptSession } from './keptSession.ts';
import type { SessionStore } from './session.ts';
import type { SiteStore } from './siteStore.ts';
import { told } from './told.ts';

/** A place on the device that holds values by key. Either side may fail by rejecting. */
export interface Shelf {
  readonly read: (key: string) => Promise<unknown>;
  /** Writes all or nothing. */
  readonly write: (values: Readonly<Record<string, unknown>>) => Promise<void>;
}

const chest = 'lathline';
const drawer = 'desk';

/**
 * The shelf in the browser's IndexedDB. It stays open, so that a write is on its way before the page can
 * go; after a failure it is opened anew, so that the failure can pass.
 */
export const deviceShelf = (): Shelf => {
  let opened: Promise<IDBPDatabase> | null = null;
  const letGo = (): void => {
    void opened?.then((db) => db.close()).catch(() => undefined);
    opened = null;
  };
  const open = (): Promise<IDBPDatabase> =>
    openDB(chest, 1, {
      upgrade: (db) => {
        db.createObjectStore(drawer);
      },
      blocking: letGo,
      terminated: letGo,
    });
  const using = async <T>(deed: (db: IDBPDatabase) => Promise<T>): Promise<T> => {
    try {
      return await deed(await (opened ??= open()));
    } catch (error) {
      letGo();
      throw error;
    }
  };
  return {
    read: (key) => using((db) => db.get(drawer, key)),
    write: (values) =>
      using(async (db) => {
        const deal = db.transaction(drawer, 'readwrite');
        const puts = Object.entries(values).map(([key, value]) => deal.store.put(value, key));
        // waits for no answer: a page that is left gives none
        deal.commit();
        await Promise.all([...puts, deal.done]);
      }),
  };
};

/** What a device has kept. `trouble` is one line when something was there and could not be read. */
export interface Kept {
  readonly site: Site | null;
  readonly session: Partial<KeptSession>;
  readonly trouble: string | null;
}

/** Reads what the device has kept. Never throws; an empty shelf is no trouble. */
export const loadKept = async (shelf: Shelf): Promise<Kept> => {
  try {
    const [value, session] = [await shelf.read('site'), readKept(await shelf.read('session'))];
    if (value === undefined) return { site: null, session, trouble: null };
    const site = openDocument(value);
    if (site.ok) return { site: site.value, session, trouble: null };
    const trouble = `The drawing kept on this device cannot be opened: ${site.reason}`;
    return { site: null, session, trouble };
  } catch (error) {
    const trouble = `Nothing could be read from this device: ${told(error)}`;
    return { site: null, session: {}, trouble };
  }
};

/** What is to be kept, and where. */
export interface Keeping {
  readonly shelf: Shelf;
  readonly site: SiteStore;
  readonly session: SessionStore;
}

/** Keeps the document on a shelf; `stop` ends it, `now` keeps the session too as it stands. */
export interface Keeper {
  readonly now: () => Promise<void>;
  readonly stop: () => void;
}

/**
 * Writes the present document and the session's view at every commit, undo, redo and load; never
 * a draft. Writes follow one another, and one that is overtaken is left out. Never throws: the
 * first failure in a row is told as one line in the session.
 */
export const keep = ({ shelf, site, session }: Keeping): Keeper => {
  let running: Promise<void> | null = null;
  let stale = false;
  let failing = false;
  const write = async (): Promise<void> => {
    try {
      const { history, drawn } = site.getState();
      await shelf.write({ site: drawn(history.present.site), session: keptOf(session.getState()) });
      failing = false;
    } catch (error) {
      if (!failing) {
        session.setState({ say: `This drawing is not being kept on the device: ${told(error)}` });
      }
      failing = true;
    }
  };
  const writeAll = async (): Promise<void> => {
    while (stale) {
      stale = false;
      await write();
    }
    running = null;
  };
  const now = (): Promise<void> => {
    stale = true;
    running ??= writeAll();
    return running;
  };
  const stop = site.subscribe((state, before) => {
    if (state.history.present.site !== before.history.present.site) void now();
  });
  return { now, stop };
};
