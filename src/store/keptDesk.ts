import { kept as sharing } from '../site/kept.ts';
import type { JobId } from './jobId.ts';
import { keptOf, type KeptSession } from './keptSession.ts';
import type { SessionStore } from './session.ts';

/** Of the desk: the session, and which job is on the pad, by their keys. */
export type Desk = Readonly<Record<string, unknown>>;

/** Knows what of the desk has been written. */
export interface DeskKeeper {
  /** What has not been written yet, and is now. */
  readonly taken: () => Desk;
  /** This was not written after all. */
  readonly back: (lost: Desk) => void;
  /** Nothing of what was written is there any more. */
  readonly gone: () => void;
}

/** Keeps account of the desk, which starts with `pad` as the job that was written last. */
export const deskKeeper = (
  session: SessionStore,
  onPad: () => JobId,
  pad: JobId | null,
): DeskKeeper => {
  let [session0, pad0, lost0]: [KeptSession | null, JobId | null, Desk] = [null, pad, {}];
  return {
    taken: () => {
      const session1 = sharing(session0, keptOf(session.getState()));
      const fresh = { ...lost0, ...(session1 !== session0 && { session: session1 }) };
      const both = onPad() === pad0 ? fresh : { ...fresh, pad: onPad() };
      [session0, pad0, lost0] = [session1, onPad(), {}];
      return both;
    },
    back: (lost) => {
      lost0 = { ...lost, ...lost0 };
    },
    gone: () => {
      [session0, pad0, lost0] = [null, null, {}];
    },
  };
};
