import { smallPlan } from '../../drawing/plan/smallPlan.ts';
import type { Bench } from '../bench.ts';

/** Keeps the small picture of the job on the pad with it. A device that cannot has none in its list. */
export const keepLook = async ({ site, layOut, jobs }: Bench): Promise<void> => {
  const { pad, history } = site.getState();
  const { job, there } = jobs.keeper.state.getState();
  if (job !== pad.job || there === null) return;
  const shown = history.present.site;
  await jobs.shelf.writeLook(pad.job, smallPlan(shown, layOut(shown))).catch(() => undefined);
};
