import type { Site } from '../../../site/site.ts';
import { attempt } from '../../attempt.ts';
import { useBench } from '../../bench.ts';

/** Makes edits from a card: null when made, else the one line for the field. */
export const useEdit = (): ((label: string, on: (site: Site) => Site) => string | null) => {
  const bench = useBench();
  return (label, on) => attempt(bench, { label, on });
};

/** Makes edits for which there is no field to complain at: what is refused is said. */
export const useDo = (): ((label: string, on: (site: Site) => Site) => void) => {
  const bench = useBench();
  return (label, on) => {
    const fault = attempt(bench, { label, on });
    if (fault !== null) bench.session.setState({ say: fault });
  };
};
