import { changeJob } from '../site/edits/changeJob.ts';
import { freshJobId, type JobId } from './jobId.ts';
import { freshLedger, sendingMove, sendingWhole, type Ledger } from './ledger.ts';
import { readJob, type KeptJob, type Shelves } from './loadKept.ts';
import { withoutBytes } from './picturesApart.ts';
import { stepped } from './trail.ts';

/** When it is, and where jobs lie. */
export interface ShelfAt extends Shelves {
  readonly now: number;
}

const readThere = async (shelves: Shelves, id: JobId): Promise<KeptJob> => {
  const job = await readJob(shelves, id);
  if (job === null) throw new RangeError('this job is no longer on the device');
  return job;
};

const named = ({ again, ledger }: KeptJob, name: string, label: string) =>
  stepped(ledger.trail, withoutBytes(changeJob(again.present.drawn, { name })), label);

const extraAt = ({ now }: ShelfAt) => ({ desk: {}, by: freshJobId(), now });

/** Writes another name into the title block of a job that is not on the pad: a step like any other. RangeError for one that is too long. */
export const renameJob = async (at: ShelfAt, id: JobId, name: string): Promise<void> => {
  const job = await readThere(at, id);
  if (job.again.present.drawn.job.name === name) return;
  const trail = named(job, name, 'Change job name');
  await at.shelf.write(sendingMove(job.ledger, trail, extraAt(at)).write);
};

/** Makes another job of one, with its history and another name. */
export const duplicateJob = async (at: ShelfAt, id: JobId, name: string): Promise<JobId> => {
  const job = await readThere(at, id);
  const fresh = freshJobId();
  const trail = named(job, name, 'Duplicate job');
  const ledger = freshLedger(fresh, trail, { under: null, now: at.now });
  const { pictures, wanted } = job.ledger.head;
  const seen: Ledger = { ...ledger, head: { ...ledger.head, pictures, wanted } };
  await at.shelf.write(sendingWhole(seen, trail, extraAt(at)).write);
  const look = (await at.shelf.looks()).get(id);
  if (look !== undefined) await at.shelf.writeLook(fresh, look);
  return fresh;
};

/** Puts a job into the bin or takes it out, whether it can be opened or not: `binned` is since when it lies there. */
export const binJob = async (at: ShelfAt, id: JobId, binned: number | null): Promise<void> => {
  const head = (await at.shelf.heads()).find((one) => one.id === id);
  if (head === undefined) throw new RangeError('this job is no longer on the device');
  await at.shelf.write({
    head: { ...head, binned, writes: head.writes + 1, by: freshJobId() },
    after: head,
    where: 'there',
    document: null,
    gone: [],
    steps: new Map(),
    desk: {},
  });
};
