import type { IDBPDatabase } from 'idb';
import type { JobId } from './jobId.ts';
import { sameStamp, ShelfRefusal, type JobShelf, type JobWrite } from './jobShelf.ts';
import { byJob, openChest, type Chest } from './keptChest.ts';

type Db = IDBPDatabase<Chest>;

const stepsOf = (id: JobId, from = -Infinity, to = Infinity): IDBKeyRange =>
  IDBKeyRange.bound([id, from], [id, to]);

const writeJob = async (db: Db, write: JobWrite): Promise<void> => {
  const { head, after, where, document, gone, steps, desk } = write;
  const { id } = head;
  const deal = db.transaction(['desk', 'jobs', 'documents', 'steps'], 'readwrite', {
    durability: 'strict',
  });
  const jobs = deal.objectStore('jobs');
  const kept = deal.objectStore('steps');
  // all requests at once; the answer to the first decides whether any of them holds
  let refusal: ShelfRefusal | null = null;
  const looked = jobs.get(id).then((there) => {
    const isOther = there !== undefined && !sameStamp(there, after);
    const isGone = there === undefined && after !== null && where === 'there';
    if (isOther || isGone) refusal = new ShelfRefusal(there ?? null);
    if (refusal === null) deal.commit();
    else deal.abort();
  });
  const puts = [
    jobs.put(head, id),
    ...gone.map(([from, to]) => kept.delete(stepsOf(id, from, to))),
    ...[...steps].map(([version, step]) => kept.put(step, [id, version])),
    ...(document === null ? [] : [deal.objectStore('documents').put(document, id)]),
    ...Object.entries(desk).map(([key, value]) => deal.objectStore('desk').put(value, key)),
  ];
  const [done] = await Promise.allSettled([deal.done, looked, ...puts]);
  if (refusal !== null) throw refusal;
  if (done.status === 'rejected') throw deal.error ?? done.reason;
};

const isClosed = (error: unknown): boolean =>
  error instanceof Error && error.name === 'InvalidStateError';

const removeJobs = async (db: Db, ids: readonly JobId[]): Promise<void> => {
  const deal = db.transaction([...byJob, 'steps'], 'readwrite');
  const puts = ids.flatMap((id) => [
    ...byJob.map((drawer) => deal.objectStore(drawer).delete(id)),
    deal.objectStore('steps').delete(stepsOf(id)),
  ]);
  await Promise.all([...puts, deal.done]);
};

/**
 * The shelf in the browser's IndexedDB. It stays open, so that a write is on its way before the page can
 * go; after a failure it is opened anew, so that the failure can pass.
 */
export const deviceJobShelf = (): JobShelf => {
  let opened: Promise<Db> | null = null;
  let heard: () => void = () => undefined;
  const letGo = (): void => {
    void opened?.then((db) => db.close()).catch(() => undefined);
    opened = null;
  };
  const lost = (): void => {
    letGo();
    heard();
  };
  const using = async <T>(deed: (db: Db) => Promise<T>): Promise<T> => {
    const before = opened;
    try {
      return await deed(await (opened ??= openChest(lost)));
    } catch (error) {
      if (error instanceof ShelfRefusal) throw error;
      letGo();
      // one that was closed meanwhile is opened again, once
      if (before === null || !isClosed(error)) throw error;
      return deed(await (opened ??= openChest(lost)));
    }
  };
  return {
    readDesk: (key) => using((db) => db.get('desk', key)),
    writeDesk: (values) =>
      using(async (db) => {
        const deal = db.transaction('desk', 'readwrite');
        const puts = Object.entries(values).map(([key, value]) => deal.store.put(value, key));
        // waits for no answer: a page that is left gives none
        deal.commit();
        await Promise.all([...puts, deal.done]);
      }),
    heads: () => using((db) => db.getAll('jobs')),
    read: (id) =>
      using(async (db) => {
        const deal = db.transaction(['jobs', 'documents', 'steps']);
        const kept = deal.objectStore('steps');
        const [head, document, keys, values] = await Promise.all([
          deal.objectStore('jobs').get(id),
          deal.objectStore('documents').get(id),
          kept.getAllKeys(stepsOf(id)),
          kept.getAll(stepsOf(id)),
        ]);
        if (head === undefined) return null;
        return { head, document, steps: new Map(keys.map(([, at], n) => [at, values[n]])) };
      }),
    write: (write) => using((db) => writeJob(db, write)),
    remove: (ids) => using((db) => removeJobs(db, ids)),
    looks: () =>
      using(async (db) => {
        const { store } = db.transaction('looks');
        const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
        return new Map(keys.map((key, n) => [key as JobId, values[n]]));
      }),
    writeLook: (id, look) =>
      using(async (db) => {
        await db.put('looks', look, id);
      }),
    onLost: (listener) => {
      heard = listener;
    },
  };
};
