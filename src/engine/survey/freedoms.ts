import { nullVectors } from '../../geometry/upperTriangle.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Motion } from './motion.ts';
import type { Strength } from './strength.ts';

/**
 * What is known no better than to this is not known at all, inches: some 1,600 miles. Coefficients are
 * at most about a thousand to the inch and are rounded in the sixteenth digit, so that what is free in
 * truth stands a hundred thousand times above it. Ours.
 */
export const unknown = 1e8;

/** Moves smaller than this share of the longest of their motion are rounding. */
const trace = 1e-9;

const motionOf = (columns: ReadonlyMap<MarkId, number>, vector: Float64Array): Motion => {
  const longest = vector.reduce((most, move) => Math.max(most, Math.abs(move)), 0);
  return new Map(
    [...columns].flatMap(([id, column]) => {
      const [x, y] = [vector[column]! / longest, vector[column + 1]! / longest];
      return Math.abs(x) + Math.abs(y) < trace ? [] : [[id, { x, y }] as const];
    }),
  );
};

/**
 * The freedoms of a network: motions of its marks, the longest move in each 1 in along x or y, of which
 * every motion that the observations do not tell is made up, to the first order. They span the null
 * space of the observation equations: once these are turned into a triangle, a column of which less is
 * left than one in `unknown` depends on those before it, and gives one motion. So special positions
 * (marks in one row, circles through three) count as free.
 */
export const freedomsOf = ({ frame, triangle }: Strength): Motion[] =>
  nullVectors(triangle).map((vector) => motionOf(frame.columns, vector));
