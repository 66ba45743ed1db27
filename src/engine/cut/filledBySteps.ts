import { bestFill } from './bestFill.ts';
import type { FittedTask } from './fittedTask.ts';
import type { Column } from './leastSticks.ts';

/** A column and how often it is cut. */
export interface Cutting {
  readonly column: Column;
  readonly times: number;
}

export const boughtIn = (cuttings: readonly Cutting[]): number =>
  cuttings.reduce((sum, { column, times }) => sum + (column.offcut < 0 ? times : 0), 0);

const used = ({ lengths }: FittedTask, counts: readonly number[]): number =>
  counts.reduce((sum, count, n) => sum + count * (lengths[n] ?? 0), 0);

/** As often as what is left to cut allows. */
const oftenAs = (counts: readonly number[], left: readonly number[]): number =>
  Math.min(
    ...counts.map((count, n) => (count === 0 ? Infinity : Math.floor((left[n] ?? 0) / count))),
  );

/** Fills offcuts, the shortest first, then sticks that are bought, each with what is worth most. */
const filledBy = (task: FittedTask, worth: readonly number[]): Cutting[] => {
  const left = [...task.counts];
  const cuttings: Cutting[] = [];
  const fill = (room: number, offcut: number, has: number) => {
    for (let open = has; open > 0 && left.some((count) => count > 0);) {
      const { counts } = bestFill({ lengths: task.lengths, worth, most: left, room });
      const times = Math.min(open, oftenAs(counts, left));
      if (times === Infinity) return;
      counts.forEach((count, n) => (left[n] = (left[n] ?? 0) - times * count));
      cuttings.push({ column: { counts, offcut }, times });
      open -= times;
    }
  };
  task.offcuts.forEach(({ room, has }, n) => fill(room, n, has));
  fill(task.room, -1, Infinity);
  return cuttings;
};

/** How much more than its length a piece is worth, round by round: long ones are hard to place. */
const powers = [1.01, 1.02, 1.04, 1.08, 1.16] as const;

/**
 * A plan by filling one stick after the other with what is worth most, and again with pieces worth more
 * that came onto sticks that were left badly filled (sequential value correction, Mukhacheva and others
 * 1996), until it needs no more than `enough` sticks or has been tried so many times. Always the same.
 */
export const filledBySteps = (task: FittedTask, enough: number, tries: number): Cutting[] => {
  let worth: number[] = [...task.lengths];
  let best = filledBy(task, worth);
  for (let n = 0; n < tries && boughtIn(best) > enough; n += 1) {
    const power = powers[n % powers.length] ?? 1;
    const next = task.lengths.map(() => ({ worth: 0, count: 0 }));
    for (const { column, times } of filledBy(task, worth)) {
      const room = column.offcut < 0 ? task.room : (task.offcuts[column.offcut]?.room ?? task.room);
      const poor = room / Math.max(1, used(task, column.counts));
      column.counts.forEach((count, m) => {
        const own = next[m];
        if (own === undefined || count === 0) return;
        own.worth += times * count * (task.lengths[m] ?? 0) ** power * poor;
        own.count += times * count;
      });
    }
    worth = worth.map((was, m) => {
      const { worth: sum, count } = next[m] ?? { worth: 0, count: 0 };
      return count === 0 ? was : (was + sum / count) / 2;
    });
    const found = filledBy(task, worth);
    if (boughtIn(found) < boughtIn(best)) best = found;
  }
  return best;
};
