import { cutStock } from '../../../src/engine/cut/cutStock.ts';
import { stickModel, sticksOf } from '../../engine/cut/cuttingModel.ts';
import { randomTask } from '../../engine/cut/randomTask.ts';
import { measured } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';

/** Seconds that the solver has for a task. */
const patience = 10;

const run = ({ quick }: Pace): Figure => {
  const tasks = Array.from({ length: quick ? 15 : 100 }, (_, n) => randomTask(n));
  const models = tasks.map(stickModel);
  const plans = tasks.map(cutStock);
  const least = models.map((model) => sticksOf(model, patience));
  const count = (holds: (n: number) => boolean): number => tasks.filter((_, n) => holds(n)).length;
  const same = count((n) => plans[n]?.bought === least[n]);
  const proven = count((n) => plans[n]?.bought === plans[n]?.least);
  const open = count((n) => least[n] === null);
  return measured(
    () => tasks.map(cutStock),
    () => models.map((model) => sticksOf(model, patience)),
    {
      rounds: quick ? 2 : 6,
      warm: 1,
      calls: { ours: 4, theirs: 1 },
      note: `of ${tasks.length} tasks ${same} with as few sticks as the solver, ${open} that it does not prove; ${proven} that we prove`,
    },
  );
};

/** Sticks that rails and posts are cut from. */
export const cutting: Row = {
  work: 'cutting stock',
  against: 'HiGHS on the same',
  bar: 0.1,
  run: (pace) => Promise.resolve(run(pace)),
};
