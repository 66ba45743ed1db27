import { cholesky, type Cholesky } from '../../geometry/cholesky.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import { misfits, type Misfit } from './misfit.ts';
import type { Network } from './networks.ts';
import type { Sighting } from './sighting.ts';

/**
 * One standard deviation of the sketch, inches: about 200 ft, ten thousand times that of a tape, so
 * that what is taped is moved by less than a hundred-thousandth of an inch where the sketch is
 * off by ten feet, and the sums stay well within sixteen digits. Ours, no published source.
 */
export const sketchSigma = 2500;

/** A row of the observation equations over its sigma: columns and coefficients, and what it is off by. */
export interface Row {
  readonly sighting: Sighting;
  readonly columns: readonly number[];
  readonly values: readonly number[];
  /** Over its sigma. */
  readonly off: number;
}

/** Where the unknowns of each free mark stand: x at the column, y after it. */
export type Columns = ReadonlyMap<MarkId, number>;

/** The columns of the marks of a network that are not fixed. */
export const columnsOf = ({ spots }: Network): Columns =>
  new Map([...spots].filter(([, { fixed }]) => !fixed).map(([id], n) => [id, 2 * n] as const));

/** Misfits as rows: what fixed marks would do is left out. */
export const rowsOf = (
  { sightings }: Network,
  columns: Columns,
  at: (id: MarkId) => SitePoint,
): Row[] =>
  sightings.flatMap((sighting) =>
    misfits(sighting.seen, at).map((found) => rowOf(sighting, found, columns)),
  );

const rowOf = (sighting: Sighting, { off, parts }: Misfit, columns: Columns): Row => {
  const { sigma } = sighting;
  const own = parts.flatMap(({ mark, x, y }) => {
    const column = columns.get(mark);
    return column === undefined ? [] : [{ column, x: x / sigma, y: y / sigma }];
  });
  return {
    sighting,
    columns: own.flatMap(({ column }) => [column, column + 1]),
    values: own.flatMap(({ x, y }) => [x, y]),
    off: off / sigma,
  };
};

/** The normal matrix of rows with the sketch held weakly, damped by a share of its diagonal. */
export const normalOf = (rows: readonly Row[], size: number, damping = 0): Float64Array => {
  const matrix = new Float64Array(size * size);
  for (const { columns, values } of rows) {
    for (const [n, row] of columns.entries()) {
      for (const [m, column] of columns.entries()) {
        matrix[row * size + column]! += values[n]! * values[m]!;
      }
    }
  }
  for (let n = 0; n < size; n += 1) {
    matrix[n * size + n]! *= 1 + damping;
    matrix[n * size + n]! += sketchSigma ** -2;
  }
  return matrix;
};

/** The factored normal matrix of rows. It always is positive definite, since the sketch is held. */
export const factored = (rows: readonly Row[], size: number, damping = 0): Cholesky | null =>
  cholesky(normalOf(rows, size, damping), size);

/** A row by a matrix by a row. */
export const through = (a: Row, matrix: Float64Array, size: number, b: Row = a): number => {
  let sum = 0;
  for (const [n, row] of a.columns.entries()) {
    for (const [m, column] of b.columns.entries()) {
      sum += a.values[n]! * matrix[row * size + column]! * b.values[m]!;
    }
  }
  return sum;
};
