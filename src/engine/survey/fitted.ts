import { addRow, leastSquares } from '../../geometry/upperTriangle.ts';
import { triangleOf, type Row } from './rows.ts';
import { longestOf, stepped, type Stance, type Task } from './stance.ts';

/** A step shorter than this ends the sums, inches: far below what anybody sets a post to. */
export const still = 1e-8;

const mostSteps = 100;

/** How far a sum of squares is rounded, as a share of it. */
const rounding = 1e-13;

/** By how much the sum of squares would fall if a step did what its rows say. */
const foretold = (rows: readonly Row[], by: Float64Array): number => {
  let fall = 0;
  for (const { columns, values, off } of rows) {
    let next = off;
    for (let n = 0; n < columns.length; n += 1) next += values[n]! * by[columns[n]!]!;
    fall += off * off - next * next;
  }
  return fall;
};

const stepOf = ({ frame }: Task, { rows }: Stance, hold: number): Float64Array => {
  const triangle = triangleOf(rows, frame);
  const root = [Math.sqrt(hold)];
  for (let column = 0; column < frame.later.length; column += 1)
    addRow(triangle, [column], root, 0);
  return leastSquares(triangle);
};

/** How the next step is held for how well the last one did what it foretold. */
const heldBy = (hold: number, gain: number): number => {
  if (gain > 0.75) return hold / 10;
  return gain > 0.25 ? hold : hold * 4;
};

/**
 * Weighted least squares from a start: steps of Gauss and Newton, each held to where the marks stand
 * before it, as Levenberg and Marquardt do. The hold is that of a standard deviation as wide as the
 * network, tighter only while steps fail; since it goes along with the marks it pulls the result
 * nowhere. In a special position, where the free step leads on and on past a place that tighter ones
 * have come to rest at, that place is the end.
 */
export const fitted = (
  task: Task,
  start: Stance,
): { readonly stance: Stance; readonly converged: boolean } => {
  const least = task.reach ** -2;
  let [now, hold, growth, rested] = [start, least, 2, false];
  for (let step = 0; step < mostSteps; step += 1) {
    const by = stepOf(task, now, hold);
    const fall = foretold(now.rows, by);
    const next = stepped(task, now, by);
    const falls = next.cost < now.cost;
    if (longestOf(by) < still || fall <= rounding * now.cost) {
      if (falls) now = next;
      if (hold <= least) return { stance: now, converged: true };
      [hold, rested] = [least, true];
    } else if (falls) {
      hold = Math.max(least, heldBy(hold, (now.cost - next.cost) / fall));
      [now, growth, rested] = [next, 2, false];
    } else {
      if (rested) return { stance: now, converged: true };
      [hold, growth] = [hold * growth, growth * 2];
    }
  }
  return { stance: now, converged: false };
};
