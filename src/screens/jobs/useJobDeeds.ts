import { phrase } from '../../phrases/phrase.ts';
import { changeJob } from '../../site/edits/changeJob.ts';
import type { JobId } from '../../store/jobId.ts';
import { binJob, duplicateJob, renameJob, type ShelfAt } from '../../store/shelfDeeds.ts';
import { told } from '../../store/told.ts';
import { attempt } from '../attempt.ts';
import { useBench } from '../bench.ts';
import type { JobDeeds } from './JobEntry.tsx';
import { forgetFiles } from '../files/ownFile.ts';
import { jobName } from './jobName.ts';
import { openJob } from './openJob.ts';

interface Parts {
  readonly onOpened: () => void;
  readonly read: () => Promise<void>;
  readonly setFault: (line: string | null) => void;
}

/** What can be done with jobs of the list; the list is read anew after each, and a failure is one line over it. */
export const useJobDeeds = ({ onOpened, read, setFault }: Parts) => {
  const bench = useBench();
  const { jobs, site } = bench;
  const at = (): ShelfAt => ({ ...jobs, now: Date.now() });
  const deed = async (does: () => Promise<unknown>): Promise<void> => {
    let line: string | null = null;
    try {
      await jobs.keeper.now();
      await does();
    } catch (error) {
      line = phrase`That could not be done: ${told(error)}`;
    }
    await read();
    if (line !== null) setFault(line);
  };
  /** What is written here is no longer as undo and redo of this window know it. */
  const apart = (id: JobId, does: () => Promise<void>) =>
    deed(async () => {
      jobs.keeper.forget(id);
      await does();
    });
  const rename = async (id: JobId, name: string): Promise<void> => {
    if (site.getState().pad.job !== id) return apart(id, () => renameJob(at(), id, name));
    const line = attempt(bench, {
      label: phrase`Change job name`,
      on: (now) => changeJob(now, { name }),
    });
    await read();
    return line === null ? undefined : setFault(line);
  };
  const open = async (id: JobId): Promise<void> => {
    const line = await openJob(bench, id);
    if (line === null) onOpened();
    else setFault(line);
  };
  const deeds: JobDeeds = {
    open: ({ id }) => void open(id),
    duplicate: (job) => void deed(() => duplicateJob(at(), job.id, phrase`${jobName(job)}, copy`)),
    rename: ({ id }, name) => void rename(id, name),
    bin: ({ id }) => void apart(id, () => binJob(at(), id, Date.now())),
    takeBack: ({ id }) => void apart(id, () => binJob(at(), id, null)),
  };
  const empty = (ids: readonly JobId[]) =>
    void deed(async () => {
      await jobs.shelf.remove(ids);
      await forgetFiles(bench, ids);
    });
  return { deeds, empty };
};
