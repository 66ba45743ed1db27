import type { JobId } from './jobId.ts';
import { sameStamp, ShelfRefusal, type JobHead, type JobShelf } from './jobShelf.ts';
import { sendingMove, type Ledger, type Sending } from './ledger.ts';
import type { Trail } from './trail.ts';

type Desk = Readonly<Record<string, unknown>>;

/** What whoever writes is told. */
export interface WriterEars {
  /** A write lies on the shelf; `trail` is what it brought there. */
  readonly arrived: (head: JobHead, trail: Trail) => void;
  /** A write failed, and with it what of the desk went along. Told once until the job has been written again. */
  readonly failed: (job: JobId, error: unknown, desk: Desk) => void;
  /** Another window has written the job: nothing of this window comes there before the two are joined. */
  readonly overtaken: (job: JobId) => void;
}

/** Writes jobs, one transaction after the other. */
export interface JobWriter {
  readonly know: (ledger: Ledger) => void;
  /** A job is no longer this window's. */
  readonly forget: (job: JobId) => void;
  readonly ledgerOf: (job: JobId) => Ledger | undefined;
  /** Writes what leads from the trail sent last to this one, by one move; all of it where that is not known to lie there. */
  readonly write: (job: JobId, trail: Trail, desk: Desk) => void;
  /** What this window has of a job goes on as a job of its own, which is not on the shelf yet. */
  readonly part: (job: JobId) => JobId | null;
  /** When all that was sent has arrived or failed. */
  readonly settled: () => Promise<void>;
}

interface Parts extends WriterEars {
  readonly shelf: JobShelf;
  readonly now: () => number;
  readonly fresh: () => JobId;
}

/** The writer of a shelf: the one place from which jobs that are worked on are written. */
export const jobWriter = (parts: Parts): JobWriter => {
  const { shelf, now, fresh, arrived, failed, overtaken } = parts;
  const ledgers = new Map<JobId, Ledger>();
  const pending = new Set<Promise<void>>();
  const by = fresh();
  const arrive = ({ write, ledger }: Sending): void => {
    const known = ledgers.get(write.head.id);
    if (known !== undefined) ledgers.set(write.head.id, { ...known, there: write.head });
    arrived(write.head, ledger.trail);
  };
  const fail = ({ write }: Sending, error: unknown): void => {
    const { id } = write.head;
    const known = ledgers.get(id);
    // what was sent after a write that failed fails too
    if (known === undefined || !known.sound) return;
    const unsound: Ledger = { ...known, sound: false };
    const found = error instanceof ShelfRefusal ? error.found : known.there;
    if (found !== null && !sameStamp(found, known.there)) {
      ledgers.set(id, unsound);
      overtaken(id);
      return;
    }
    ledgers.set(id, found === null ? { ...unsound, sent: null, there: null } : unsound);
    failed(id, error, write.desk);
  };
  return {
    know: (ledger) => void ledgers.set(ledger.head.id, ledger),
    forget: (job) => void ledgers.delete(job),
    ledgerOf: (job) => ledgers.get(job),
    write: (job, trail, desk) => {
      const ledger = ledgers.get(job);
      if (ledger === undefined) return;
      const sending = sendingMove(ledger, trail, { desk, by, now: now() });
      ledgers.set(job, sending.ledger);
      const write = shelf.write(sending.write).then(
        () => arrive(sending),
        (error: unknown) => fail(sending, error),
      );
      pending.add(write);
      void write.then(() => pending.delete(write));
    },
    part: (job) => {
      const known = ledgers.get(job);
      if (known === undefined) return null;
      const other = fresh();
      const head = { ...known.head, id: other, writes: 0, made: now() };
      ledgers.delete(job);
      ledgers.set(other, { ...known, head, sound: false, sent: null, there: null });
      return other;
    },
    settled: async () => {
      while (pending.size > 0) await Promise.all(pending);
    },
  };
};
