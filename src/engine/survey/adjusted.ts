import { solved } from '../../geometry/cholesky.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Network } from './networks.ts';
import { columnsOf, factored, rowsOf, sketchSigma, type Columns, type Row } from './normal.ts';

/** Where the marks of a network stand, and whether the sums came to an end. */
export interface Adjusted {
  readonly places: ReadonlyMap<MarkId, SitePoint>;
  readonly converged: boolean;
}

/** A step shorter than this ends the sums, inches: far below what anybody sets a post to. */
const still = 1e-7;
/** What is off by no more is as drawn, and stays there to the last bit. */
const asDrawn = 1e-7;
const mostSteps = 60;

/** Where the marks are for a vector of moves from where they were drawn. */
const placesAt = ({ spots }: Network, columns: Columns, moved: Float64Array) =>
  new Map(
    [...spots].map(([id, { x, y }]): [MarkId, SitePoint] => {
      const column = columns.get(id);
      if (column === undefined) return [id, { x, y }];
      return [id, { x: x + moved[column]!, y: y + moved[column + 1]! }];
    }),
  );

const origin: SitePoint = { x: 0, y: 0 };

/** The sum of squares of all rows and of the moves, each over its sigma. */
const costOf = (rows: readonly Row[], moved: Float64Array): number =>
  rows.reduce((sum, { off }) => sum + off * off, 0) +
  moved.reduce((sum, move) => sum + (move / sketchSigma) ** 2, 0);

/** The downhill side of the normal equations. */
const rightOf = (rows: readonly Row[], moved: Float64Array): Float64Array => {
  const right = Float64Array.from(moved, (move) => -move / sketchSigma ** 2);
  for (const { columns, values, off } of rows) {
    for (const [n, column] of columns.entries()) right[column]! -= values[n]! * off;
  }
  return right;
};

/**
 * The places of the marks of a network that fit what was observed best: weighted least squares by
 * Gauss and Newton, damped as Levenberg and Marquardt do, held weakly to where the marks were drawn so
 * that there always is an answer. What fits as drawn stays so to the last bit. Never throws.
 */
export const adjusted = (network: Network): Adjusted => {
  const columns = columnsOf(network);
  const size = 2 * columns.size;
  const look = (moved: Float64Array) => {
    const places = placesAt(network, columns, moved);
    const rows = rowsOf(network, columns, (id) => places.get(id) ?? origin);
    return { moved, places, rows, cost: costOf(rows, moved) };
  };
  let now = look(new Float64Array(size));
  let damping = 0;
  for (let step = 0; step < mostSteps; step += 1) {
    const factor = factored(now.rows, size, damping);
    if (factor === null) return { places: now.places, converged: false };
    const by = solved(factor, rightOf(now.rows, now.moved));
    const longest = by.reduce((most, move) => Math.max(most, Math.abs(move)), 0);
    if (step === 0 && longest < asDrawn) return { places: now.places, converged: true };
    const next = look(now.moved.map((move, n) => move + by[n]!));
    if (next.cost <= now.cost || longest < still) {
      now = next;
      damping = damping < 1e-9 ? 0 : damping / 10;
      if (longest < still) return { places: now.places, converged: true };
    } else {
      damping = damping === 0 ? 1e-4 : damping * 10;
      if (damping > 1e12) return { places: now.places, converged: true };
    }
  }
  return { places: now.places, converged: false };
};
