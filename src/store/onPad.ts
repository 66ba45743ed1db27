import * as versions from './history.ts';
import type { History, Version } from './history.ts';
import type { JobId } from './jobId.ts';

/**
 * The job on the pad. A job that was begun over another has that one under it: undo at its beginning
 * takes it off again, and redo puts it back.
 */
export interface OnPad {
  readonly job: JobId;
  readonly history: History;
  readonly under: OnPad | null;
  /** The job that undo took off, and over which version it lay. */
  readonly over: { readonly pad: OnPad; readonly from: Version } | null;
}

/** A job alone on the pad. */
export const alone = (job: JobId, history: History): OnPad => ({
  job,
  history,
  under: null,
  over: null,
});

/** A new job over the one on the pad. */
export const begunOver = (pad: OnPad, job: JobId, history: History): OnPad => ({
  ...alone(job, history),
  under: { ...pad, history: versions.cancel(pad.history), over: null },
});

/** The pad with another history of its job; the same one when it is the same. */
export const withHistory = (pad: OnPad, history: History): OnPad =>
  history === pad.history ? pad : { ...pad, history };

/** Keeps a document as the new present of the job; what undo took off the pad is forgotten with the rest. */
export const commit = (pad: OnPad, next: Version): OnPad => {
  const history = versions.commit(pad.history, next.site, next.label);
  if (history.present === pad.history.present) return withHistory(pad, history);
  return { ...pad, history, over: null };
};

/** Takes the last edit back, or the job off the pad where it has none. */
export const undo = (pad: OnPad): OnPad => {
  const { history, under } = pad;
  if (history.past.length > 0 || under === null) return withHistory(pad, versions.undo(history));
  const taken = { ...pad, history: versions.cancel(history), under: null };
  return { ...under, over: { pad: taken, from: under.history.present } };
};

const waiting = ({ history, over }: OnPad): OnPad | null =>
  over !== null && over.from === history.present ? over.pad : null;

/** Does again what undo took back last. */
export const redo = (pad: OnPad): OnPad => {
  const next = waiting(pad);
  return next === null
    ? withHistory(pad, versions.redo(pad.history))
    : { ...next, under: { ...pad, history: versions.cancel(pad.history), over: null } };
};

/** What undo takes back, by its label; null for nothing. */
export const undoLabel = ({ history, under }: OnPad): string | null =>
  history.past.length > 0 || under !== null ? history.present.label : null;

/** What redo does again, by its label; null for nothing. */
export const redoLabel = (pad: OnPad): string | null => {
  const next = waiting(pad);
  return next === null ? (pad.history.future[0]?.label ?? null) : next.history.present.label;
};

/** A pad from which undo and redo do not lead to a job, nor to what lies beyond it. */
export const without = (pad: OnPad, job: JobId): OnPad => {
  const { under, over } = pad;
  const below = under === null || under.job === job ? null : without(under, job);
  const above = over === null || over.pad.job === job ? null : without(over.pad, job);
  if (below === under && above === (over?.pad ?? null)) return pad;
  return {
    ...pad,
    under: below,
    over: above === null || over === null ? null : { ...over, pad: above },
  };
};
