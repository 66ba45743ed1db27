import type { SitePoint } from '../../geometry/point.ts';
import { addRow, emptyTriangle, type UpperTriangle } from '../../geometry/upperTriangle.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Frame } from './frame.ts';
import { misfits, type Misfit } from './misfit.ts';
import type { Sighting } from './sighting.ts';

/** A row of the observation equations over its sigma: columns and coefficients, and what it is off by. */
export interface Row {
  readonly sighting: Sighting;
  readonly columns: readonly number[];
  readonly values: readonly number[];
  /** What the marks have less what was read, over its sigma. */
  readonly off: number;
}

/** Where marks stand, site inches. */
export type Places = ReadonlyMap<MarkId, SitePoint>;

const origin: SitePoint = { x: 0, y: 0 };

const rowOf = (sighting: Sighting, { off, parts }: Misfit, { columns }: Frame): Row => {
  const { sigma } = sighting;
  const row = { sighting, columns: [] as number[], values: [] as number[], off: off / sigma };
  for (const { mark, x, y } of parts) {
    const column = columns.get(mark);
    // what a fixed mark would do is left out
    if (column === undefined) continue;
    row.columns.push(column, column + 1);
    row.values.push(x / sigma, y / sigma);
  }
  return row;
};

/** The observation equations of sightings where the marks stand at these places. */
export const rowsOf = (sightings: readonly Sighting[], frame: Frame, places: Places): Row[] => {
  const at = (id: MarkId): SitePoint => places.get(id) ?? origin;
  return sightings.flatMap((sighting) =>
    misfits(sighting.seen, at).map((found) => rowOf(sighting, found, frame)),
  );
};

/**
 * Rows turned into a triangle: their right side is the move that would mend what they are off by. A hold,
 * over square inches, is the weight of staying where the marks are.
 */
export const triangleOf = (rows: readonly Row[], { later }: Frame, hold = 0): UpperTriangle => {
  const triangle = emptyTriangle(later);
  triangle.diagonal.fill(Math.sqrt(hold));
  for (const { columns, values, off } of rows) addRow(triangle, columns, values, -off);
  return triangle;
};
