import { openDB, type DBSchema } from 'idb';
import type { JobId } from './jobId.ts';
import { tooMany } from './pictureShelf.ts';

/**
 * The place on the device that remembers documents as they were saved and opened, so that a copy that comes
 * back finds what it came from. Each may fail by rejecting.
 */
export interface CopyShelf {
  /** The text of a document by its digest; null for one that is not on this device. */
  readonly read: (digest: string) => Promise<string | null>;
  /** Remembers a document; the longest unused go when there are too many. */
  readonly write: (digest: string, text: string) => Promise<void>;
  /** Where a job of this device comes from, as it was last told; undefined for one of which nothing was. */
  readonly lineageOf: (job: JobId) => Promise<unknown>;
  readonly tell: (job: JobId, lineage: unknown) => Promise<void>;
}

/** Documents and characters of them that a device remembers. Ours: months of a person's jobs. */
const mostCopies = { count: 60, characters: 30_000_000 } as const;

/** Jobs of which a device remembers where they come from; each takes no more than 3 kB. */
const mostTold = 1000;

interface Shelved {
  readonly text: string;
  /** When it was last wanted, milliseconds. */
  readonly wanted: number;
}

interface Told {
  readonly lineage: unknown;
  readonly wanted: number;
}

interface Chest extends DBSchema {
  readonly copies: { readonly key: string; readonly value: Shelved };
  readonly lineages: { readonly key: string; readonly value: Told };
}

// a chest of its own: no job on the device depends on it
const chest = 'lathline-copies';

/** Which documents have to go, the longest unwanted first, so that few enough and small enough are left. */
export const copiesTooMany = (
  shelved: ReadonlyMap<string, { readonly characters: number; readonly wanted: number }>,
  most: { readonly count: number; readonly characters: number },
): string[] => {
  const newest = [...shelved].toSorted(([, a], [, b]) => b.wanted - a.wanted);
  const over = newest.slice(most.count).map(([digest]) => digest);
  const left = new Map(
    newest
      .slice(0, most.count)
      .map(([digest, { characters, wanted }]) => [digest, { bytes: characters, wanted }]),
  );
  return [...over, ...tooMany(left, most.characters, new Set())];
};

/** The shelf in the browser's IndexedDB. Opened at each use, so that a failure can pass. */
export const deviceCopyShelf = (): CopyShelf => {
  const open = () =>
    openDB<Chest>(chest, 1, {
      upgrade: (db) => {
        db.createObjectStore('copies');
        db.createObjectStore('lineages');
      },
    });
  type Db = Awaited<ReturnType<typeof open>>;
  const using = async <T>(deed: (db: Db) => Promise<T>): Promise<T> => {
    const db = await open();
    try {
      return await deed(db);
    } finally {
      db.close();
    }
  };
  const prune = async (db: Db): Promise<void> => {
    const [keys, values] = await Promise.all([db.getAllKeys('copies'), db.getAll('copies')]);
    const known = keys.map((key, n) => {
      const { text, wanted } = values[n] ?? { text: '', wanted: 0 };
      return [key, { characters: text.length, wanted }] as const;
    });
    for (const key of copiesTooMany(new Map(known), mostCopies)) await db.delete('copies', key);
  };
  const pruneTold = async (db: Db): Promise<void> => {
    const [keys, values] = await Promise.all([db.getAllKeys('lineages'), db.getAll('lineages')]);
    const old = keys
      .map((key, n) => [key, values[n]?.wanted ?? 0] as const)
      .toSorted(([, a], [, b]) => b - a)
      .slice(mostTold);
    for (const [key] of old) await db.delete('lineages', key);
  };
  return {
    read: (digest) =>
      using(async (db) => {
        const shelved = await db.get('copies', digest);
        if (shelved === undefined) return null;
        await db.put('copies', { ...shelved, wanted: Date.now() }, digest);
        return shelved.text;
      }),
    write: (digest, text) =>
      using(async (db) => {
        await db.put('copies', { text, wanted: Date.now() }, digest);
        await prune(db);
      }),
    lineageOf: (job) => using(async (db) => (await db.get('lineages', job))?.lineage),
    tell: (job, lineage) =>
      using(async (db) => {
        await db.put('lineages', { lineage, wanted: Date.now() }, job);
        await pruneTold(db);
      }),
  };
};
