import type { Site } from '../site/site.ts';
import type { Cell } from './cell.ts';
import type { History } from './history.ts';
import type { JobId } from './jobId.ts';
import type { JobHead, JobShelf } from './jobShelf.ts';
import { createSender, type Keeping, type Sender } from './keeping.ts';
import type { KeepTrouble, KeptState } from './keptState.ts';
import { isChosenAnew } from './keptSession.ts';
import { freshLedger, type Ledger } from './ledger.ts';
import { withoutBytes } from './picturesApart.ts';
import type { SessionStore } from './session.ts';
import type { SiteState } from './siteStore.ts';
import { begunTrail, movedTo, stepped, tooOld, withoutOldest, type Trail } from './trail.ts';
import { phrase } from '../phrases/phrase.ts';

/** Keeps the job on the pad on a shelf. */
export interface Keeper {
  readonly state: Cell<KeptState>;
  /** Keeps the session too as it stands, and tries again what failed. */
  readonly now: () => Promise<void>;
  /** Brings the job on the pad up to what another window may have written while this one did not hear. */
  readonly catchUp: () => void;
  /** A job that was read from the shelf is about to come onto the pad. */
  readonly know: (ledger: Ledger) => void;
  /** A job that is not on the pad was or will be written by somebody else: undo and redo no longer lead to it. */
  readonly forget: (job: JobId) => void;
  /** The head of a job as this window knows it; undefined for one that was not on its pad. */
  readonly headOf: (job: JobId) => JobHead | undefined;
  /** Puts the line about a trouble away. */
  readonly hush: () => void;
  readonly stop: () => void;
}

/** Bytes of steps that a device keeps of one job: tens of thousands of edits. Ours. */
export const mostHistory = 24_000_000;

const unreadable: KeepTrouble = {
  kind: 'let go',
  line: phrase`Older versions of this job cannot be read on this device; what is on the pad is whole.`,
};

const letGo = (count: number, most: number): KeepTrouble => {
  const steps = count === 1 ? phrase`oldest step` : phrase`oldest ${count} steps`;
  const size = Math.round(most / 1_000_000);
  const line = phrase`The ${steps} of this job can no longer be undone: its history had reached ${size} MB.`;
  return { kind: 'let go', line };
};

/** Whether the store found on undo or redo that it cannot read what lies there. */
const isCut = ({ history }: SiteState, { history: before }: SiteState): boolean =>
  (history.past.length === 0 && before.past.length > 0) ||
  (history.future.length === 0 && before.future.length > 0);

/** The trail after what was done to the history of its job. */
const movedTrail = (trail: Trail, before: History, after: History, drawn: Site): Trail => {
  if (before.future[0] === after.present) return movedTo(trail, trail.at + 1);
  if (before.past.at(-1) === after.present) return movedTo(trail, trail.at - 1);
  return stepped(trail, withoutBytes(drawn), after.present.label);
};

/** Whether a job was never worked on, so that nobody will look for it. */
const isBlank = ({ steps, present }: Trail): boolean => {
  const { job, marks, features, underlays } = present as unknown as Site;
  const drawn = [marks, features, underlays].some((map) => Object.keys(map).length > 0);
  return steps.length === 0 && !drawn && job.name === '';
};

/** Takes a job that nobody will look for off the shelf. */
const removeBlank = (job: JobId, shelf: JobShelf, { writer, after }: Sender): void => {
  const ledger = writer.ledgerOf(job);
  if (ledger === undefined || ledger.sent === null) return;
  writer.know({ ...ledger, sent: null, there: null, sound: false });
  after(async () => {
    await writer.settled();
    await shelf.remove([job]).catch(() => undefined);
  });
};

/** Writes what is chosen in the session when it is; what is chosen while that waits goes with it. */
const keepChoices = (session: SessionStore, { after, keepDesk }: Sender): (() => void) => {
  let waits = false;
  return session.subscribe((now, before) => {
    if (waits || !isChosenAnew(now, before)) return;
    waits = true;
    after(() => {
      waits = false;
      return keepDesk();
    });
  });
};

const drawnNow = ({ history, drawn }: SiteState): Site => drawn(history.present.site);

/**
 * Writes every commit, undo, redo and load of the job on the pad as it happens, each in one transaction
 * that writes only what changed, and the session's view with it where that is another; never a draft. What is
 * chosen in the session is written when it is.
 * Never throws: what stands in the way is told in the state, and what was not written is written whole
 * with the next change or try.
 */
export const keep = (keeping: Keeping): Keeper => {
  const { shelf, site, session, now, most } = keeping;
  const sender = createSender(keeping);
  const { teller, writer, trails, onPad, send, catchUp, isGiving } = sender;
  const { after: later, keepDesk, lost, settled } = sender;

  /** Begins a trail for the job on the pad, where it has none. */
  const begin = (state: SiteState): void => {
    const { job, under, history } = state.pad;
    if (trails.has(job)) return;
    const trail = begunTrail(withoutBytes(drawnNow(state)), history.present.label);
    trails.set(job, trail);
    writer.know(freshLedger(job, trail, { under: under?.job ?? null, now: now() }));
  };

  const switched = (after: SiteState, before: SiteState): void => {
    begin(before);
    begin(after);
    const left = before.pad.job;
    const trail = trails.get(left);
    const blank = trail !== undefined && isBlank(trail);
    if (!blank && writer.ledgerOf(left)?.sound === false) send(left, drawnNow(before));
    send(after.pad.job, drawnNow(after));
    if (blank) removeBlank(left, shelf, sender);
  };

  /** Lets the oldest of a trail go where it takes too much, and says so. */
  const bounded = (trail: Trail): Trail => {
    const count = tooOld(trail, most);
    if (count === 0) return trail;
    teller.say(letGo(count, most));
    site.getState().forget(count);
    return withoutOldest(trail, count);
  };

  const hear = (after: SiteState, before: SiteState): void => {
    // its trail is there already
    if (isGiving()) return;
    if (after.pad.job !== before.pad.job) {
      // under another name it is the same history
      if (after.history !== before.history) switched(after, before);
      return;
    }
    const cut = after.history.present === before.history.present;
    if (cut && isCut(after, before)) teller.say(unreadable);
    begin(before);
    const trail = trails.get(after.pad.job);
    if (cut || trail === undefined) return;
    const drawn = drawnNow(after);
    trails.set(after.pad.job, bounded(movedTrail(trail, before.history, after.history, drawn)));
    send(after.pad.job, drawn);
  };

  const again = async (): Promise<void> => {
    // what is on its way may be all there is to do
    await settled();
    begin(site.getState());
    const [ledger, trail] = [writer.ledgerOf(onPad()), trails.get(onPad())];
    // a pad on which nothing was done yet is no job
    const begun = ledger?.sent !== null || (trail !== undefined && !isBlank(trail));
    if (begun && ledger?.sound === false) send(onPad(), drawnNow(site.getState()));
    else later(keepDesk);
    await settled();
  };
  const stops = [site.subscribe(hear), keepChoices(session, sender)];
  shelf.onLost(() => later(lost));
  return {
    state: teller.state,
    now: again,
    catchUp,
    know: (ledger) => {
      trails.set(ledger.head.id, ledger.trail);
      writer.know(ledger);
    },
    forget: (job) => {
      trails.delete(job);
      writer.forget(job);
      site.getState().drop(job);
    },
    headOf: (job) => writer.ledgerOf(job)?.head,
    hush: () => teller.state.setState({ trouble: null }),
    stop: () => {
      for (const stop of stops) stop();
    },
  };
};
