import type { PictureId } from '../site/ids.ts';
import { kept } from '../site/kept.ts';
import { openDocument } from '../site/openDocument.ts';
import type { Site } from '../site/site.ts';
import type { KeptDocument } from './change.ts';
import type { JobId } from './jobId.ts';
import type { JobShelf } from './jobShelf.ts';
import { readKept, type KeptSession } from './keptSession.ts';
import { readLedger, type Ledger } from './ledger.ts';
import { withBytes, type PictureBytes } from './picturesApart.ts';
import type { JobAgain, LazyVersion } from './siteStore.ts';
import { told } from './told.ts';
import { documentAt, lastOf, movedTo, stepTo, type Trail } from './trail.ts';
import { phrase } from '../phrases/phrase.ts';

/** A job that was read from the device. */
export interface KeptJob {
  readonly ledger: Ledger;
  readonly again: JobAgain;
}

/** What is needed to read a job. */
export interface Shelves {
  readonly shelf: JobShelf;
  readonly bytes: PictureBytes;
}

const isGone = (value: unknown): boolean => value === null || value === undefined;

/** The document of a version, had when it is looked at; what it shares with the present is the same. */
const versionsOf = (trail: Trail, opened: (document: KeptDocument) => Site): LazyVersion[] => {
  // undo and redo go step by step, so the next one is one step from the last
  let near = trail;
  return Array.from({ length: lastOf(trail) - trail.first + 1 }, (_, n) => {
    const at = trail.first + n;
    return {
      label: stepTo(trail, at)?.label ?? trail.begun,
      drawn: () => {
        near = movedTo(near, at);
        return opened(near.present);
      },
    };
  });
};

/** A job as the shelf has it, ready for the pad. RangeError of one line where it cannot be opened. */
export const readJob = async ({ shelf, bytes }: Shelves, id: JobId): Promise<KeptJob | null> => {
  const record = await shelf.read(id);
  if (record === null) return null;
  const ledger = readLedger(record);
  if (ledger === null) throw new RangeError('there is no document');
  const { trail } = ledger;
  const pictures = record.head.pictures.length === 0 ? {} : await bytes.read(record.head.pictures);
  const opened = (document: KeptDocument): Site => {
    const site = openDocument(withBytes(document, pictures as Record<PictureId, never>));
    if (!site.ok) throw new RangeError(site.reason);
    return site.value;
  };
  const present = opened(trail.present);
  const versions = versionsOf(trail, (document) => kept(present, opened(document)));
  const done = trail.at - trail.first;
  const label = versions[done]?.label ?? trail.begun;
  return {
    ledger,
    again: {
      job: id,
      past: versions.slice(0, done),
      present: { drawn: present, label },
      future: versions.slice(done + 1),
    },
  };
};

/** The document that a job has now, of whatever version of the file format; null where it is not there. */
export const presentOf = async (shelf: JobShelf, id: JobId): Promise<KeptDocument | null> => {
  const record = await shelf.read(id);
  const ledger = record === null ? null : readLedger(record);
  return ledger === null ? null : documentAt(ledger.trail, ledger.trail.at);
};

/** What a device has kept. `trouble` is one line when something was there and could not be read. */
export interface Kept {
  readonly job: KeptJob | null;
  /** The job that undo goes on to at the beginning of the other. */
  readonly under: KeptJob | null;
  readonly session: Partial<KeptSession>;
  readonly trouble: string | null;
}

/** The job that another one was begun over, where it is still there, out of the bin and readable. */
const readUnder = async (shelves: Shelves, { head }: Ledger): Promise<KeptJob | null> => {
  if (isGone(head.under)) return null;
  try {
    const under = await readJob(shelves, head.under as JobId);
    return under === null || under.ledger.head.binned !== null ? null : under;
  } catch {
    return null;
  }
};

/** What a browser says while another run of it still lets go of the place; by the specification of IndexedDB. */
const passing: readonly string[] = ['UnknownError', 'AbortError', 'TimeoutError'];

/** Reads, and after each of these pauses (milliseconds) again where what failed can pass. */
const tried = async <T>(read: () => Promise<T>, pauses: readonly number[]): Promise<T> => {
  const [pause, ...rest] = pauses;
  try {
    return await read();
  } catch (error) {
    const passes = error instanceof Error && passing.includes(error.name);
    if (pause === undefined || !passes) throw error;
    await new Promise((resume) => setTimeout(resume, pause));
    return tried(read, rest);
  }
};

/** The job that was on the pad; where it is not there, the one that was worked on last, out of the bin. */
const jobToOpen = async (shelf: JobShelf): Promise<JobId | null> => {
  const pad = await shelf.readDesk('pad');
  const heads = (await shelf.heads()).filter(({ binned }) => binned === null);
  if (heads.some(({ id }) => id === pad)) return pad as JobId;
  return heads.toSorted((a, b) => b.worked - a.worked)[0]?.id ?? null;
};

/** How long to wait for a browser that is still letting go, milliseconds. Ours. */
const usualPauses = [100, 400, 1500, 3000, 5000];

/** Reads what the device has kept. Never throws; an empty shelf is no trouble. */
export const loadKept = async (shelves: Shelves, pauses = usualPauses): Promise<Kept> => {
  const nothing = { job: null, under: null };
  try {
    const session = readKept(await tried(() => shelves.shelf.readDesk('session'), pauses));
    const id = await tried(() => jobToOpen(shelves.shelf), pauses);
    if (id === null) return { ...nothing, session, trouble: null };
    try {
      const job = await readJob(shelves, id);
      const under = job === null ? null : await readUnder(shelves, job.ledger);
      return { job, under, session, trouble: null };
    } catch (error) {
      const trouble = phrase`The job kept on this device cannot be opened: ${told(error)}`;
      return { ...nothing, session, trouble };
    }
  } catch (error) {
    const trouble = phrase`Nothing could be read from this device: ${told(error)}`;
    return { ...nothing, session: {}, trouble };
  }
};
