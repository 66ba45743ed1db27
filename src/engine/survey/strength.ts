import { inverse } from '../../geometry/cholesky.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Network } from './networks.ts';
import { columnsOf, factored, rowsOf, through, type Columns, type Row } from './normal.ts';

/** The observation equations of a network where its marks stand, and what they make of its unknowns. */
export interface Strength {
  readonly columns: Columns;
  readonly size: number;
  readonly rows: readonly Row[];
  /** Covariance of the moves of the marks, square inches, by rows; what nothing holds is as sketched. */
  readonly covariance: Float64Array;
}

const origin: SitePoint = { x: 0, y: 0 };

/** How strong a network is whose marks stand at these places. */
export const strengthOf = (network: Network, places: ReadonlyMap<MarkId, SitePoint>): Strength => {
  const columns = columnsOf(network);
  const size = 2 * columns.size;
  const rows = rowsOf(network, columns, (id) => places.get(id) ?? origin);
  const factor = factored(rows, size);
  const covariance = factor === null ? new Float64Array(size * size) : inverse(factor);
  return { columns, size, rows, covariance };
};

/** Of an error in a row, the share that all others show: its redundancy number, 0 to 1. */
export const redundancyOf = (row: Row, { covariance, size }: Strength): number =>
  Math.min(1, Math.max(0, 1 - through(row, covariance, size)));
