import { turned } from '../../geometry/turned.ts';
import {
  freeDependent,
  whitened,
  whitenedSquare,
  type UpperTriangle,
} from '../../geometry/upperTriangle.ts';
import { frameOf, type Frame } from './frame.ts';
import type { Network } from './networks.ts';
import { reachOf } from './reachOf.ts';
import { rowsOf, type Places, type Row } from './rows.ts';

/** The observation equations of a network where its marks stand, and what they make of its unknowns. */
export interface Strength {
  readonly frame: Frame;
  readonly rows: readonly Row[];
  /** The rows turned together, with what nothing holds set free. */
  readonly triangle: UpperTriangle;
}

const freed = (frame: Frame, rows: readonly Row[], loose: number): Strength => {
  const triangle = turned(frame.fill, rows);
  freeDependent(triangle, 1 / loose);
  return { frame, rows, triangle };
};

/**
 * How strong a network is whose marks stand at these places. An unknown that is known no better than
 * to `loose` inches (one standard deviation, with those after it in the sums held) is free; unless told
 * otherwise that is how far the whole network reaches.
 */
export const strengthOf = (
  network: Network,
  places: Places,
  loose: number = reachOf(network),
  frame: Frame = frameOf(network),
): Strength => freed(frame, rowsOf(network.sightings, frame, places), loose);

/**
 * The same with what is known no better than to `loose` free as well, as if it had been told so from the
 * start; itself where that is nothing more.
 */
export const loosened = (strength: Strength, loose: number): Strength => {
  const { frame, rows, triangle } = strength;
  const { starts } = frame.fill;
  const isMore = triangle.free.some(
    (free, column) => free === 0 && Math.abs(triangle.values[starts[column]!]!) < 1 / loose,
  );
  return isMore ? freed(frame, rows, loose) : strength;
};

/** A row as a combination of all unknowns. */
const combinationOf = (
  { columns, values }: Pick<Row, 'columns' | 'values'>,
  { frame }: Pick<Strength, 'frame'>,
): Float64Array => {
  const combination = new Float64Array(frame.size);
  for (let n = 0; n < columns.length; n += 1) combination[columns[n]!]! += values[n]!;
  return combination;
};

/** A row as R⁻ᵀ has it: products of such are covariances, over the sigmas of their readings. */
export const shadowOf = (row: Row, strength: Strength): Float64Array =>
  whitened(strength.triangle, combinationOf(row, strength));

/** The sum of the products of two rows of numbers. */
export const product = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let n = 0; n < a.length; n += 1) sum += a[n]! * b[n]!;
  return sum;
};

/**
 * Of an error in a row, the share that all others show: its redundancy number, 0 to 1 (W. Baarda, A
 * Testing Procedure for Use in Geodetic Networks, Delft 1968; from memory).
 */
export const redundancyOf = (row: Row, strength: Strength): number => {
  // what says nothing where its marks stand is checked by nothing
  if (row.columns.length > 0 && row.values.every((value) => value === 0)) return 0;
  const known = whitenedSquare(strength.triangle, row);
  return Math.min(1, Math.max(0, 1 - known));
};
