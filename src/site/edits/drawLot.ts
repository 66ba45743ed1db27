import type { SitePoint } from '../../geometry/point.ts';
import { inches } from '../../units/inches.ts';
import { entry } from '../entry.ts';
import type { MarkId } from '../ids.ts';
import { markAt, type Place } from '../markAt.ts';
import { verticesOf } from '../pathOrder.ts';
import { nextId } from '../nextId.ts';
import { pathFeature } from '../pathFeature.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';
import { addFeature } from './addFeature.ts';

/** A point of a lot, in inches from its first one. */
export interface LotPoint extends SitePoint {
  /** What is there, as `iron pin`; empty for nothing. */
  readonly label: string;
  /** `corner`: its sides meet there. `curve`: it only draws a curved side. */
  readonly is: 'corner' | 'curve';
}

/** A lot, or a part of its boundary, that is to be drawn. */
export interface DrawnLot {
  readonly label: string;
  readonly closed: boolean;
  /** In their order; the first is at 0, 0. */
  readonly points: readonly LotPoint[];
}

/**
 * Draws a lot as a boundary, its first point at a place: a mark that is there or a point of the ground.
 * Its corners are fixed marks with their names, so that what is taped to them does not move them; a mark
 * that has a name keeps it. The points of its curves are marks without names, which go with the lot.
 * RangeError for an unknown mark, for too few points, and beyond ten miles.
 */
export const drawLot = (site: Site, lot: DrawnLot, place: Place): Site => {
  const { label, closed, points } = lot;
  const { site: begun, mark } = markAt(site, place);
  const { x, y } = entry(begun, 'marks', mark);
  const others = points.slice(1).map((point) => ({ x: x + point.x, y: y + point.y }));
  const fields = { kind: 'boundary', label, closed, setback: inches(0) } as const;
  const drawn = addFeature(begun, fields, [mark, ...others]);
  const marks = verticesOf(pathFeature(drawn, nextId(begun, 'feature')).path);
  const fixed = marks.flatMap(({ mark: id }, n) => {
    const point = points[n];
    if (point?.is !== 'corner') return [];
    const was = entry(drawn, 'marks', id);
    return [[id, { ...was, fixed: true, label: was.label || point.label }] as const];
  });
  return withEntries(drawn, 'marks', Object.fromEntries<Site['marks'][MarkId]>(fixed));
};
