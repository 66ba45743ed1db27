import { phrase } from '../../phrases/phrase.ts';
import type { JobId } from '../../store/jobId.ts';
import { readJob } from '../../store/loadKept.ts';
import { noCalls } from '../../store/callsAtHand.ts';
import { told } from '../../store/told.ts';
import type { Bench } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { keepLook } from './keepLook.ts';

/** Puts a job of this device on the pad with its history. Null, or the one line that says why it cannot be. */
export const openJob = async (bench: Bench, id: JobId): Promise<string | null> => {
  const { jobs, site, session } = bench;
  if (site.getState().pad.job === id) return null;
  try {
    await jobs.keeper.now();
    await keepLook(bench);
    const job = await readJob(jobs, id);
    if (job === null) return phrase`This job is no longer on the device.`;
    jobs.keeper.know(job.ledger);
    session.setState({ selection: null, tool: 'select', say: '', calls: noCalls });
    site.getState().take(job.again, null);
    fitAll(bench);
    return null;
  } catch (error) {
    return phrase`This job cannot be opened: ${told(error)}`;
  }
};
