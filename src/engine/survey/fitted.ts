import { mended } from '../../geometry/mended.ts';
import { turned, type Equation } from '../../geometry/turned.ts';
import { leastSquares, type UpperTriangle } from '../../geometry/upperTriangle.ts';
import type { Row } from './rows.ts';
import { longestOf, stepped, type Stance, type Task } from './stance.ts';

/** A step shorter than this ends the sums, inches: far below what anybody sets a post to. */
export const still = 1e-8;

/** Steps shorter than this need no bending, inches, and leave the triangle as good as it was. Ours. */
const straight = 0.01;

/** So much shorter than the one before is a step that an old triangle is still good for. Ours. */
const shorter = 0.1;

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

/** The share of a step at which its bend is felt. */
const feel = 0.1;

/** A bend longer than this share of the step says that the step is no longer to be trusted. */
const mostBend = 0.75;

/**
 * How a step ought to bend, so that the rows stay as the step would have them: half the second
 * derivative of the rows along it, mended as the step mends the rows. Nothing where it is too much.
 */
const bendOf = (task: Task, now: Stance, by: Float64Array, triangle: UpperTriangle) => {
  const part = stepped(
    task,
    now,
    by.map((move) => feel * move),
  );
  const bent = now.rows.map(({ columns, values, off }, n): Equation => {
    let along = 0;
    for (let k = 0; k < columns.length; k += 1) along += values[k]! * by[columns[k]!]!;
    return { columns, values, off: (2 / feel) * ((part.rows[n]!.off - off) / feel - along) };
  });
  const bend = mended(triangle, bent);
  return longestOf(bend) > mostBend * longestOf(by) ? null : bend;
};

/** A step, and what it was worked out by. */
interface Step {
  readonly by: Float64Array;
  /** By how much the sum of squares would fall if the step did what its rows say. */
  readonly fall: number;
  readonly triangle: UpperTriangle;
  readonly hold: number;
}

/**
 * A step of Gauss and Newton that is held to where the marks stand, bent as the ground asks (geodesic
 * acceleration: M. Transtrum and J. Sethna 2012, from memory): where fixes turn a stiff body, straight
 * steps would have to be short ones.
 */
const stepOf = (task: Task, now: Stance, hold: number): Step => {
  const triangle = turned(task.frame.fill, now.rows, hold);
  const by = leastSquares(triangle);
  const fall = foretold(now.rows, by);
  if (longestOf(by) < straight) return { by, fall, triangle, hold };
  const bend = bendOf(task, now, by, triangle);
  const bent = bend === null ? by : by.map((move, n) => move + bend[n]! / 2);
  return { by: bent, fall, triangle, hold };
};

/** The first step of a fit from a start, held as weakly as any. */
export const firstStep = (task: Task, start: Stance): Step => stepOf(task, start, task.reach ** -2);

/** The next step: after a short one by the same triangle, where that makes them shorter as fast as a new one. */
const nextStep = (task: Task, now: Stance, hold: number, last: Step): Step => {
  const long = longestOf(last.by);
  if (hold === last.hold && long < straight) {
    const by = mended(last.triangle, now.rows);
    if (longestOf(by) <= shorter * long) return { ...last, by, fall: foretold(now.rows, by) };
  }
  return stepOf(task, now, hold);
};

/** How the next step is held for how well the last one did what it foretold. */
const heldBy = (hold: number, gain: number): number => {
  if (gain > 0.75) return hold / 10;
  return gain > 0.25 ? hold : hold * 4;
};

/** Where a fit has come to, whether it came to an end there, and after how many steps. */
export interface Fit {
  readonly stance: Stance;
  readonly converged: boolean;
  readonly steps: number;
}

interface Limits {
  /** After so many steps it ends anyway. */
  readonly steps?: number | undefined;
  /** The first of them, where it is known already. */
  readonly first?: Step;
}

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
  { steps = mostSteps, first = firstStep(task, start) }: Limits = {},
): Fit => {
  const least = first.hold;
  let [now, hold, growth, rested, last] = [start, least, 2, false, first];
  for (let step = 0; step < steps; step += 1) {
    if (step > 0) last = nextStep(task, now, hold, last);
    const { by, fall } = last;
    const next = stepped(task, now, by);
    const falls = next.cost < now.cost;
    if (longestOf(by) < still || fall <= rounding * now.cost) {
      if (falls) now = next;
      if (hold <= least) return { stance: now, converged: true, steps: step + 1 };
      [hold, rested] = [least, true];
    } else if (falls) {
      hold = Math.max(least, heldBy(hold, (now.cost - next.cost) / fall));
      [now, growth, rested] = [next, 2, false];
    } else {
      if (rested) return { stance: now, converged: true, steps: step + 1 };
      [hold, growth] = [hold * growth, growth * 2];
    }
  }
  return { stance: now, converged: false, steps };
};
