import { useCallback, useEffect, useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { JobId } from '../../store/jobId.ts';
import type { JobHead } from '../../store/jobShelf.ts';
import { told } from '../../store/told.ts';
import { useBench } from '../bench.ts';
import { jobsChannel } from './jobsChannel.ts';
import { keepLook } from './keepLook.ts';

/** The jobs on this device, the one that was worked on last first, each with its small picture. */
export interface Jobs {
  readonly heads: readonly JobHead[];
  readonly looks: ReadonlyMap<JobId, unknown>;
}

/** What is on the shelf, read anew when something was done there; a line where it cannot be read. */
export const useJobs = () => {
  const bench = useBench();
  const [jobs, setJobs] = useState<Jobs | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const read = useCallback(async () => {
    try {
      await bench.jobs.keeper.now();
      await keepLook(bench);
      const { shelf } = bench.jobs;
      const [heads, looks] = [await shelf.heads(), await shelf.looks()];
      setJobs({ heads: heads.toSorted((a, b) => b.worked - a.worked), looks });
      setFault(null);
    } catch (error) {
      setFault(phrase`The jobs on this device cannot be read: ${told(error)}`);
    }
  }, [bench]);
  useEffect(() => {
    const first = setTimeout(() => void read());
    const channel =
      typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(jobsChannel);
    channel?.addEventListener('message', () => void read());
    return () => {
      clearTimeout(first);
      channel?.close();
    };
  }, [read]);
  return { jobs, fault, read, setFault };
};
