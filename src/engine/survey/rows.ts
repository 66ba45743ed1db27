import type { SitePoint } from '../../geometry/point.ts';
import type { Equation } from '../../geometry/turned.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Frame } from './frame.ts';
import { misfits, type Misfit } from './misfit.ts';
import type { Sighting } from './sighting.ts';

/**
 * A row of the observation equations over its sigma: columns and coefficients, and what it is off by, which
 * is what the marks have less what was read.
 */
export interface Row extends Equation {
  readonly sighting: Sighting;
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
  const rows: Row[] = [];
  for (const sighting of sightings) {
    for (const found of misfits(sighting.seen, at)) rows.push(rowOf(sighting, found, frame));
  }
  return rows;
};
