import { phrase } from '../phrases/phrase.ts';
import type { Conflict } from '../site/merge/conflict.ts';
import type { JobId } from './jobId.ts';
import type { JobJoiner } from './jobJoiner.ts';
import type { JobWriter } from './jobWriter.ts';
import type { KeepTrouble, KeptTeller } from './keptState.ts';
import type { DeskKeeper } from './keptDesk.ts';
import type { SessionStore } from './session.ts';
import type { SiteStore } from './siteStore.ts';
import type { Trail } from './trail.ts';

const parted: KeepTrouble = {
  kind: 'other window',
  line: phrase`Another window has changed this job, and it cannot be read. What you drew here goes on as a job of its own; both are under Jobs.`,
};

/** One line about what two windows changed at once. */
const clashed = ([first, ...rest]: readonly Conflict[]): string => {
  const what = first?.what ?? '';
  const all = rest.length === 0 ? what : phrase`${what} and ${rest.length} more`;
  return phrase`Both windows changed ${all}. It stands as it was changed here; undo shows it as it was changed there.`;
};

/** What joining windows works on. */
export interface JoinsParts {
  readonly site: SiteStore;
  readonly session: SessionStore;
  readonly writer: JobWriter;
  readonly trails: Map<JobId, Trail>;
  readonly joiner: JobJoiner;
  readonly teller: KeptTeller;
  readonly desk: DeskKeeper;
  readonly send: (job: JobId, drawn: null) => void;
  readonly lost: () => Promise<void>;
}

/**
 * Joins a job with what another window wrote of it, writes what came of it and says where both changed the
 * same. What cannot be read is left, and this window goes on with a job of its own. Never rejects.
 */
export const windowJoins = (parts: JoinsParts): ((job: JobId) => Promise<void>) => {
  const { site, session, writer, trails, joiner, teller, desk, send, lost } = parts;
  const part = (job: JobId): void => {
    const trail = trails.get(job);
    const other = writer.part(job);
    if (trail === undefined || other === null) return;
    trails.set(other, trail);
    trails.delete(job);
    teller.say(parted);
    if (site.getState().pad.job === job) site.getState().rename(other);
    send(other, null);
  };
  const join = async (job: JobId): Promise<void> => {
    const joining = await joiner.join(job);
    if (joining.is === 'gone') return lost();
    if (joining.is === 'nothing') return;
    const { conflicts, trail } = joining.how;
    if (conflicts.length > 0) session.setState({ say: clashed(conflicts) });
    if (joining.is === 'joined') {
      teller.sent(job);
      return writer.write(job, trail, desk.taken());
    }
    const head = writer.ledgerOf(job)?.head;
    if (head === undefined) return;
    teller.arrived({ job, there: { writes: head.writes, at: trail.at }, all: true });
  };
  return async (job) => {
    try {
      await join(job);
    } catch {
      if (writer.ledgerOf(job)?.sound === false) part(job);
    }
  };
};
