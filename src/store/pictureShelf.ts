import { openDB, type DBSchema } from 'idb';
import type { PictureId } from '../site/ids.ts';

/** The place on the device that holds pictures by the digest of their file. Each may fail by rejecting. */
export interface PictureShelf {
  /** Null for one that is not on this device. */
  readonly read: (id: PictureId) => Promise<Blob | null>;
  readonly write: (id: PictureId, picture: Blob) => Promise<void>;
  /** Lets those go that were not wanted for the longest, until the rest has at most so many bytes. */
  readonly prune: (most: number, except: ReadonlySet<PictureId>) => Promise<void>;
}

/** A picture, and when it was last wanted, milliseconds. */
interface Shelved {
  readonly picture: Blob;
  readonly wanted: number;
}

interface Chest extends DBSchema {
  readonly pictures: { readonly key: string; readonly value: Shelved };
}

// a chest of its own: a drawing is kept whatever becomes of the pictures under it
const chest = 'lathline-pictures';

/** Which pictures have to go, the longest unwanted first, so that the rest is no more than `most` bytes. */
export const tooMany = (
  shelved: ReadonlyMap<string, { readonly bytes: number; readonly wanted: number }>,
  most: number,
  except: ReadonlySet<string>,
): string[] => {
  let rest = [...shelved.values()].reduce((sum, { bytes }) => sum + bytes, 0);
  return [...shelved]
    .filter(([id]) => !except.has(id))
    .toSorted(([, a], [, b]) => a.wanted - b.wanted)
    .flatMap(([id, { bytes }]) => {
      if (rest <= most) return [];
      rest -= bytes;
      return [id];
    });
};

/** The shelf in the browser's IndexedDB. Opened at each use, so that a failure can pass. */
export const devicePictureShelf = (): PictureShelf => {
  const open = () =>
    openDB<Chest>(chest, 1, {
      upgrade: (db) => {
        db.createObjectStore('pictures');
      },
    });
  const using = async <T>(deed: (db: Awaited<ReturnType<typeof open>>) => Promise<T>) => {
    const db = await open();
    try {
      return await deed(db);
    } finally {
      db.close();
    }
  };
  const write = (id: string, picture: Blob): Promise<void> =>
    using(async (db) => {
      await db.put('pictures', { picture, wanted: Date.now() }, id);
    });
  return {
    write,
    read: (id) =>
      using(async (db) => {
        const shelved = await db.get('pictures', id);
        if (shelved === undefined) return null;
        await db.put('pictures', { ...shelved, wanted: Date.now() }, id);
        return shelved.picture;
      }),
    prune: (most, except) =>
      using(async (db) => {
        const [keys, values] = await Promise.all([
          db.getAllKeys('pictures'),
          db.getAll('pictures'),
        ]);
        const known = keys.map((key, n) => {
          const { picture, wanted } = values[n] ?? { picture: new Blob(), wanted: 0 };
          return [key, { bytes: picture.size, wanted }] as const;
        });
        for (const id of tooMany(new Map(known), most, except)) await db.delete('pictures', id);
      }),
  };
};
