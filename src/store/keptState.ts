import { createCell, type Cell } from './cell.ts';
import type { JobId } from './jobId.ts';

/** What stands in the way of keeping, in one line, and of which sort it is. */
export interface KeepTrouble {
  readonly kind: 'full' | 'blocked' | 'emptied' | 'other window' | 'let go' | 'pictures' | 'failed';
  readonly line: string;
}

/** How far the job on the pad is kept on the device. */
export interface KeptState {
  readonly job: JobId;
  /** `writes` and the version's number of what lies on the shelf for certain; null for nothing yet. */
  readonly there: { readonly writes: number; readonly at: number } | null;
  /** Whether all that was done lies there. */
  readonly all: boolean;
  /** Null while there is none. It stands until it has passed or was put away. */
  readonly trouble: KeepTrouble | null;
}

/** Troubles that are news rather than a state: they stand until they are put away. */
const news: readonly (KeepTrouble['kind'] | undefined)[] = [
  'emptied',
  'other window',
  'let go',
  'pictures',
];

/** The state of keeping, and what may become of it. */
export interface KeptTeller {
  readonly state: Cell<KeptState>;
  /** Tells of a trouble, once until everything has been kept again. */
  readonly say: (trouble: KeepTrouble) => void;
  /** Something of a job is on its way. */
  readonly sent: (job: JobId) => void;
  readonly arrived: (now: Pick<KeptState, 'job' | 'there' | 'all'>) => void;
}

/** The state of keeping as it begins. */
export const createKeptTeller = (begin: Pick<KeptState, 'job' | 'there'>): KeptTeller => {
  const state = createCell<KeptState>({ ...begin, all: true, trouble: null });
  /** The sorts of trouble that were told and have not passed. */
  const told = new Set<KeepTrouble['kind']>();
  return {
    state,
    say: (trouble) => {
      if (!told.has(trouble.kind)) state.setState({ trouble });
      told.add(trouble.kind);
    },
    sent: (job) => state.setState({ job, all: false }),
    arrived: (now) => {
      if (now.all) for (const kind of told) if (kind !== 'pictures') told.delete(kind);
      const passes = now.all && !news.includes(state.getState().trouble?.kind);
      state.setState({ ...now, ...(passes && { trouble: null }) });
    },
  };
};
