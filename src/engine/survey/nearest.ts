import {
  addRow,
  emptyTriangle,
  freeDependent,
  leastSquares,
  type UpperTriangle,
} from '../../geometry/upperTriangle.ts';
import { still } from './fitted.ts';
import { triangleOf } from './rows.ts';
import { longestOf, stepped, type Stance, type Task } from './stance.ts';

/**
 * One standard deviation of the sketch, inches: a mile and a half. What the tapes know to a foot it
 * moves by a 70-millionth of how far the sketch is off; what they do not know goes by the sketch
 * alone. Ours, no published source.
 */
const sketchSigma = 1e5;

const mostSteps = 20;

/** By what share the sum of squares may be over the least while the marks slide along what is free. */
const spare = 1e-9;

/** Least squares that asks of the marks to come back to the sketch, but for what a triangle holds. */
const backTo = ({ later, diagonal, rows }: UpperTriangle, moved: Float64Array): Float64Array => {
  const triangle = emptyTriangle(later);
  // a right side of nothing adds no rounding to what is free, however weak the sketch is
  diagonal.forEach((value, column) => {
    const own = [value, ...rows[column]!];
    if (value !== 0) addRow(triangle, [column, ...later[column]!], own, 0);
  });
  moved.forEach((move, column) =>
    addRow(triangle, [column], [1 / sketchSigma], -move / sketchSigma),
  );
  return leastSquares(triangle);
};

const stepOf = ({ frame, reach }: Task, { rows, moved }: Stance): Float64Array => {
  const triangle = triangleOf(rows, frame);
  freeDependent(triangle, 1 / reach);
  const fit = leastSquares(triangle);
  const back = backTo(
    triangle,
    moved.map((move, n) => move + fit[n]!),
  );
  return fit.map((move, n) => move + back[n]!);
};

/**
 * Of all the places that fit as well the ones nearest to where the marks were drawn, by the sum of
 * squares of their moves: least squares with the sketch as a weak observation of every mark. From a
 * stance that fits; that itself where these steps come to no end (in special positions they may not).
 */
export const nearest = (task: Task, fit: Stance): Stance => {
  let [now, before] = [fit, task.reach];
  for (let step = 0; step < mostSteps; step += 1) {
    const by = stepOf(task, now);
    const longest = longestOf(by);
    // written so that what is no number ends here too
    if (!(longest <= before)) return fit;
    [now, before] = [stepped(task, now, by), longest];
    if (longest < still) return now.cost <= fit.cost * (1 + spare) + spare ? now : fit;
  }
  return fit;
};
