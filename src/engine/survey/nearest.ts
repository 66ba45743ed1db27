import {
  addRow,
  emptyTriangle,
  freeDependent,
  leastSquares,
  type UpperTriangle,
} from '../../geometry/upperTriangle.ts';
import { still } from './fitted.ts';
import { unknown } from './freedoms.ts';
import { triangleOf } from './rows.ts';
import { longestOf, stepped, type Stance, type Task } from './stance.ts';

/**
 * One standard deviation of the sketch, inches: 160 miles. What observations know to a hundred feet it
 * moves by less than a ten-millionth of how far the sketch is off; what they do not know goes by the
 * sketch alone. Ours, no published source.
 */
const sketchSigma = 1e7;

const mostSteps = 80;

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

const stepOf = ({ frame }: Task, { rows, moved }: Stance, loose: number): Float64Array => {
  const triangle = triangleOf(rows, frame);
  freeDependent(triangle, 1 / loose);
  const fit = leastSquares(triangle);
  const back = backTo(
    triangle,
    moved.map((move, n) => move + fit[n]!),
  );
  return fit.map((move, n) => move + back[n]!);
};

/** The nearest, with what is known no better than to `loose` inches free; null where the steps do not end. */
const nearestFrom = (task: Task, fit: Stance, loose: number): Stance | null => {
  let [now, before] = [fit, task.reach];
  for (let step = 0; step < mostSteps; step += 1) {
    const by = stepOf(task, now, loose);
    const longest = longestOf(by);
    // written so that what is no number ends here too
    if (!(longest <= before)) return null;
    [now, before] = [stepped(task, now, by), longest];
    if (longest < still) return now.cost <= fit.cost * (1 + spare) + spare ? now : null;
  }
  return null;
};

/**
 * Of all the places that fit as well the ones nearest to where the marks were drawn, by the sum of
 * squares of their moves: least squares with the sketch as a weak observation of every mark. From a
 * stance that fits; that itself where these steps come to no end (in special positions they may not,
 * even if all is free there that is known no better than to how far the network reaches).
 */
export const nearest = (task: Task, fit: Stance): Stance =>
  nearestFrom(task, fit, unknown) ?? nearestFrom(task, fit, task.reach) ?? fit;
