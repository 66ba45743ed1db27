import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import { isPlain } from '../site/isPlain.ts';
import type { PictureId } from '../site/ids.ts';
import type { KeptDocument } from './change.ts';
import { freshJobId, type JobId } from './jobId.ts';
import type { JobHead } from './jobShelf.ts';
import type { Step } from './trail.ts';
import { picturesUnder, wordsOf } from './wordsOf.ts';

/** What the browser's IndexedDB holds of jobs. */
export interface Chest extends DBSchema {
  /** `session`, and under `pad` the job that is on the pad. */
  readonly desk: { readonly key: string; readonly value: unknown };
  readonly jobs: { readonly key: string; readonly value: JobHead };
  readonly documents: { readonly key: string; readonly value: KeptDocument };
  readonly steps: { readonly key: [job: string, version: number]; readonly value: Step };
  readonly looks: { readonly key: string; readonly value: unknown };
}

/** The drawers of a chest that hold one thing for each job, by its id. */
export const byJob = ['jobs', 'documents', 'looks'] as const;

type Upgrade = IDBPTransaction<Chest, ('desk' | 'jobs' | 'documents')[], 'versionchange'>;

/** Makes the one drawing that version 1 kept the first job. */
const upgradeDrawing = async (deal: Upgrade, now: number): Promise<void> => {
  const desk = deal.objectStore('desk');
  const [site, beside] = [await desk.get('site'), await desk.get('pictures')];
  await desk.delete('site');
  await desk.delete('pictures');
  if (site === undefined) return;
  const id: JobId = freshJobId();
  const pictures = (Array.isArray(beside) ? beside : []) as PictureId[];
  const placed = Object.fromEntries(pictures.map((picture) => [picture, null]));
  // one that is no site is kept as well: reading says what is wrong with it
  const document = isPlain(site) && pictures.length > 0 ? { ...site, pictures: placed } : site;
  const place = { begun: 'Open kept drawing', first: 0, at: 0, last: 0, base: 0 };
  const times = { made: now, worked: now, binned: null };
  const seen = { pictures, wanted: isPlain(site) ? picturesUnder(site) : [] };
  const head = {
    id,
    writes: 1,
    by: '',
    ...wordsOf(site),
    ...times,
    ...place,
    ...seen,
    under: null,
  };
  await deal.objectStore('documents').put(document as KeptDocument, id);
  await deal.objectStore('jobs').put(head, id);
  await desk.put(id, 'pad');
};

/** Opens the chest; `letGo` is told when another window wants it changed or the browser closes it. */
export const openChest = (letGo: () => void): Promise<IDBPDatabase<Chest>> =>
  openDB<Chest>('lathline', 2, {
    upgrade: async (db, before, _after, deal) => {
      if (before < 1) db.createObjectStore('desk');
      for (const drawer of byJob) db.createObjectStore(drawer);
      db.createObjectStore('steps');
      if (before === 1) await upgradeDrawing(deal as Upgrade, Date.now());
    },
    blocking: letGo,
    terminated: letGo,
  });
