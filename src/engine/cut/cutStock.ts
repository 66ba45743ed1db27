import type { CutPlan, CutTask, CutWay } from './cutTask.ts';
import { boughtIn, filledBySteps, type Cutting } from './filledBySteps.ts';
import { fittedTask, type FittedTask } from './fittedTask.ts';
import { leastSticks, type Relaxed } from './leastSticks.ts';

/** How often a plan is tried anew where the bound is not reached. */
const tries = 60;

/** What is left of a task when a plan in part is cut. */
const restOf = (task: FittedTask, done: readonly Cutting[]): FittedTask => ({
  ...task,
  counts: task.counts.map((count, n) =>
    Math.max(
      0,
      count - done.reduce((sum, { column, times }) => sum + times * (column.counts[n] ?? 0), 0),
    ),
  ),
  offcuts: task.offcuts.map((offcut, n) => ({
    ...offcut,
    has:
      offcut.has -
      done.reduce((sum, { column, times }) => sum + (column.offcut === n ? times : 0), 0),
  })),
});

/** The whole part of the relaxed plan, and the rest filled stick by stick. */
const rounded = (task: FittedTask, { columns, least }: Relaxed): Cutting[] => {
  const whole = columns.flatMap(({ column, times }) => {
    const full = Math.floor(times + 1e-9);
    return full > 0 ? [{ column, times: full }] : [];
  });
  const rest = filledBySteps(restOf(task, whole), least - boughtIn(whole), tries);
  return [...whole, ...rest];
};

/** Pieces over the number that is asked for are not cut. */
const wayOf = (task: FittedTask, all: number) => {
  const left = [...task.counts];
  return ({ column, times }: Cutting): CutWay[] => {
    const { counts: each, offcut } = column;
    const takes = (count: number, n: number): number => Math.min(count, left[n] ?? 0);
    const ways: CutWay[] = [];
    let open = times;
    while (open > 0) {
      const counts = each.map(takes);
      const same = Math.min(
        open,
        ...counts.map((count, n) => (count === 0 ? Infinity : Math.floor((left[n] ?? 0) / count))),
      );
      if (counts.every((count) => count === 0)) return ways;
      counts.forEach((count, n) => (left[n] = (left[n] ?? 0) - same * count));
      const placed = Array.from({ length: all }, () => 0);
      counts.forEach((count, n) => (placed[task.of[n] ?? -1] = count));
      ways.push({
        from: offcut < 0 ? 'bought' : 'offcut',
        stick: offcut < 0 ? task.room : (task.offcuts[offcut]?.stick ?? 0),
        times: same,
        counts: placed,
      });
      open -= same;
    }
    return ways;
  };
};

interface Plan {
  readonly cuttings: readonly Cutting[];
  readonly least: number;
}

/** How long all offcuts are together that a plan cuts up. */
const cutUp = (task: FittedTask, cuttings: readonly Cutting[]): number =>
  cuttings.reduce(
    (sum, { column, times }) => sum + times * (task.offcuts[column.offcut]?.stick ?? 0),
    0,
  );

/** The plan that buys the fewest of those that were found; of those the one that cuts up least of the yard. */
const foundPlan = (task: FittedTask): Plan => {
  const relaxed = leastSticks(task);
  const { least } = relaxed;
  const plans = [rounded(task, relaxed)];
  const isFewest = boughtIn(plans[0] ?? []) <= least;
  if (!isFewest || task.offcuts.length > 0) {
    plans.push(filledBySteps(task, least, isFewest ? 0 : tries));
  }
  const [best = []] = plans.toSorted(
    (a, b) => boughtIn(a) - boughtIn(b) || cutUp(task, a) - cutUp(task, b),
  );
  return { cuttings: best, least };
};

/** The same; what lies in the yard stays there where the plan with it would buy more than one without. */
const bestPlan = (task: FittedTask): Plan => {
  const { cuttings, least } = foundPlan(task);
  if (task.offcuts.length === 0 || boughtIn(cuttings) <= least) return { cuttings, least };
  const without = foundPlan({ ...task, offcuts: [] }).cuttings;
  return { cuttings: boughtIn(without) < boughtIn(cuttings) ? without : cuttings, least };
};

/**
 * How a task is cut from as few bought sticks as were found, offcuts first, and how few there can be: where
 * both are the same it is proven that no plan buys fewer. RangeError for lengths or counts that are no whole
 * numbers above 0 (a kerf may be 0).
 */
export const cutStock = (task: CutTask): CutPlan => {
  const whole = [...task.pieces, ...task.offcuts].flatMap(({ length, count }) => [length, count]);
  const odd = [...whole, task.stick].find((one) => !(Number.isInteger(one) && one > 0));
  if (odd !== undefined || !(Number.isInteger(task.kerf) && task.kerf >= 0)) {
    throw new RangeError(`cutting: expected whole steps above 0, found ${odd ?? task.kerf}`);
  }
  const { fitted, tooLong } = fittedTask(task);
  if (fitted.lengths.length === 0) return { ways: [], bought: 0, least: 0, tooLong };
  const { cuttings: best, least } = bestPlan(fitted);
  const toWays = wayOf(fitted, task.pieces.length);
  const ways = best
    .flatMap(toWays)
    .map((way) => (way.from === 'bought' ? { ...way, stick: task.stick } : way))
    // offcuts first, as they are used first
    .toSorted((a, b) => Number(a.from === 'bought') - Number(b.from === 'bought'));
  const bought = ways.reduce((sum, { from, times }) => sum + (from === 'bought' ? times : 0), 0);
  return { ways, bought, least, tooLong };
};
