import { triangleFill } from '../../geometry/triangleFill.ts';
import { turned, type Equation } from '../../geometry/turned.ts';
import {
  freeDependent,
  leastSquares,
  nullVectors,
  type UpperTriangle,
} from '../../geometry/upperTriangle.ts';
import { still } from './fitted.ts';
import type { Frame } from './frame.ts';
import { unknown } from './freedoms.ts';
import type { Sighting } from './sighting.ts';
import { longestOf, stepped, type Stance, type Task } from './stance.ts';

/**
 * One standard deviation of the sketch, inches: 160 miles. What observations know to a hundred feet it
 * moves by less than a ten-millionth of how far the sketch is off; what they do not know goes by the
 * sketch alone. Ours, no published source.
 */
const sketchSigma = 1e7;

/**
 * A sketch counts as a fix of so many inches does: two miles. So a mark that satellites found stays
 * nearer to where they did than one that was drawn by hand stays to its sketch. Ours.
 */
const sketchAsFix = 1e5;

const mostSteps = 80;

/** By what share the sum of squares may be over the least while the marks slide along what is free. */
const spare = 1e-9;

/**
 * How weakly each column is held to where its mark was drawn, one standard deviation in inches: all
 * alike, but those that satellites found the tighter the better they did. Tells which way to go in what
 * is free; what is known it moves no more than the sketch does.
 */
const pullsOf = ({ columns, size }: Frame, sightings: readonly Sighting[]): Float64Array => {
  const weights = new Float64Array(size).fill(sketchSigma ** -2);
  for (const { seen } of sightings) {
    const column = seen.kind === 'fix' ? columns.get(seen.mark) : undefined;
    if (seen.kind !== 'fix' || column === undefined) continue;
    const weight = (sketchSigma * (seen.accuracy / sketchAsFix)) ** -2;
    weights[column]! += weight;
    weights[column + 1]! += weight;
  }
  return weights.map((weight) => weight ** -0.5);
};

/** Least squares that asks of the marks to come back to the sketch, but for what a triangle holds. */
const backTo = (
  { fill, values }: UpperTriangle,
  moved: Float64Array,
  pulls: Float64Array,
): Float64Array => {
  const asked = Array.from(moved, (move, column): Equation[] => {
    const [start, end] = [fill.starts[column]!, fill.starts[column + 1]!];
    const own = [...values.subarray(start, end)];
    const back = { columns: [column], values: [1 / pulls[column]!], off: move / pulls[column]! };
    // a right side of nothing adds no rounding to what is free, however weak the sketch is
    return [{ columns: [...fill.columns.subarray(start, end)], values: own, off: 0 }, back];
  });
  return leastSquares(turned(fill, asked.flat()));
};

/** Up to so many freedoms are gone through one by one, which takes less time for few. Ours. */
const few = 6;

/** The same for few freedoms: how far to go along each of them so as to come back the most. */
const backAlong = (
  motions: readonly Float64Array[],
  moved: Float64Array,
  pulls: Float64Array,
): Float64Array => {
  const all = motions.map((_, n) => n);
  const fill = triangleFill(all.map((n) => Int32Array.from(all.slice(n + 1))));
  const asked: Equation[] = [];
  moved.forEach((move, column) => {
    const pull = pulls[column]!;
    const values = motions.map((motion) => motion[column]! / pull);
    asked.push({ columns: all, values, off: move / pull });
  });
  const far = leastSquares(turned(fill, asked));
  return moved.map((_, column) =>
    motions.reduce((sum, motion, n) => sum + far[n]! * motion[column]!, 0),
  );
};

const wayBack = (triangle: UpperTriangle, moved: Float64Array, pulls: Float64Array) => {
  const freedoms = triangle.free.reduce((sum, free) => sum + free, 0);
  return freedoms > few
    ? backTo(triangle, moved, pulls)
    : backAlong(nullVectors(triangle), moved, pulls);
};

/** How the nearest is looked for: what counts as free, and how the columns are pulled. */
interface Search {
  readonly loose: number;
  readonly pulls: Float64Array;
}

const stepOf = (
  { frame }: Task,
  { rows, moved }: Stance,
  { loose, pulls }: Search,
): Float64Array => {
  const triangle = turned(frame.fill, rows);
  freeDependent(triangle, 1 / loose);
  const fit = leastSquares(triangle);
  const back = wayBack(
    triangle,
    moved.map((move, n) => move + fit[n]!),
    pulls,
  );
  return fit.map((move, n) => move + back[n]!);
};

/** The nearest, with what is known no better than to `loose` inches free; null where the steps do not end. */
const nearestFrom = (task: Task, fit: Stance, search: Search): Stance | null => {
  let [now, before] = [fit, task.reach];
  for (let step = 0; step < mostSteps; step += 1) {
    const by = stepOf(task, now, search);
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
 * squares of their moves: least squares with the sketch as a weak observation of every mark, and the
 * `fixes` as stronger ones. From a stance that fits; that itself where these steps come to no end (in
 * special positions they may not, even if all is free there that is known no better than to how far
 * the network reaches).
 */
export const nearest = (task: Task, fit: Stance, fixes: readonly Sighting[]): Stance => {
  const pulls = pullsOf(task.frame, fixes);
  return (
    nearestFrom(task, fit, { loose: unknown, pulls }) ??
    nearestFrom(task, fit, { loose: task.reach, pulls }) ??
    fit
  );
};
