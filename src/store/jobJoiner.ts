import type { KeptDocument } from './change.ts';
import type { JobId } from './jobId.ts';
import { joined, type Joined } from './joined.ts';
import type { JobWriter } from './jobWriter.ts';
import { readJob, type Shelves } from './loadKept.ts';
import type { SiteStore } from './siteStore.ts';
import type { Trail } from './trail.ts';

/** What a joiner works on. */
export interface JoinerParts extends Shelves {
  readonly site: SiteStore;
  readonly writer: JobWriter;
  readonly trails: Map<JobId, Trail>;
  /** Of each job the document that this window knows to lie on the shelf. */
  readonly lying: Map<JobId, KeptDocument>;
}

/** What came of joining: nothing where nobody else had written, or where the job is not on the shelf. */
export type Joining =
  | { readonly is: 'nothing' }
  | { readonly is: 'gone' }
  | { readonly is: 'followed'; readonly how: Joined }
  | { readonly is: 'joined'; readonly how: Joined };

/** Brings together what two windows made of one job. */
export interface JobJoiner {
  /** Joins the job on the pad with what lies on the shelf. Rejects where that cannot be read. */
  readonly join: (job: JobId) => Promise<Joining>;
  /** Whether the pad is being given what was joined, so that it is no edit of this window. */
  readonly isGiving: () => boolean;
  /** How often a job was joined: what was sent before the last time is in it already. */
  readonly times: (job: JobId) => number;
}

/** The joiner of a window. */
export const jobJoiner = ({
  shelf,
  bytes,
  site,
  writer,
  trails,
  lying,
}: JoinerParts): JobJoiner => {
  const counts = new Map<JobId, number>();
  let giving = false;
  /** Waits for the end of a gesture: its draft is of the document before. */
  const rest = (): Promise<void> =>
    new Promise((resolve) => {
      const isAtRest = (): boolean => site.getState().history.draft === null;
      if (isAtRest()) return resolve();
      const stop = site.subscribe(() => {
        if (!isAtRest()) return;
        stop();
        resolve();
      });
    });
  const give = (how: Joined): void => {
    giving = true;
    try {
      site.getState().follow(how.again);
    } finally {
      giving = false;
    }
  };
  const join = async (job: JobId): Promise<Joining> => {
    await writer.settled();
    await rest();
    const theirs = await readJob({ shelf, bytes }, job);
    const { pad, history, drawn } = site.getState();
    if (pad.job !== job) return { is: 'nothing' };
    if (theirs === null) return { is: 'gone' };
    const known = writer.ledgerOf(job);
    const { head } = theirs.ledger;
    if (known?.sound && known.there?.writes === head.writes && known.there.by === head.by)
      return { is: 'nothing' };
    const { site: present, label } = history.present;
    const how = joined(lying.get(job) ?? null, { drawn: drawn(present), label }, theirs);
    counts.set(job, (counts.get(job) ?? 0) + 1);
    trails.set(job, how.trail);
    lying.set(job, theirs.ledger.trail.present);
    writer.know(theirs.ledger);
    give(how);
    return { is: how.trail === theirs.ledger.trail ? 'followed' : 'joined', how };
  };
  return { join, isGiving: () => giving, times: (job) => counts.get(job) ?? 0 };
};
