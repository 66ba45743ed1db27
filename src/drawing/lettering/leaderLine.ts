import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import { nearestOnSegment, type Nearest } from '../../geometry/nearestOnSegment.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { lineStrip } from './lineStrips.ts';

const dot = 0.018;

/** A leader from the place that a text speaks of to the text, and the strip that it takes up. */
export interface Leader {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly strip: OrientedBox<'paper'>;
}

/** The nearest point on the edge of a box; the first edge of those that are as near. */
const nearestOn = (from: PaperPoint, box: OrientedBox<'paper'>): PaperPoint => {
  const around = corners(box);
  let nearest: Nearest<'paper'> | null = null;
  for (let n = 0; n < around.length; n++) {
    const [start, end] = [around[n] ?? from, around[(n + 1) % around.length] ?? from];
    const other = nearestOnSegment(from, { start, end });
    if (nearest === null || other.distance < nearest.distance) nearest = other;
  }
  return nearest?.point ?? from;
};

/** The leader from a place to the nearest edge of a text. */
export const leaderLine = (from: PaperPoint, box: OrientedBox<'paper'>): Leader => {
  const to = nearestOn(from, box);
  return { from, to, strip: lineStrip(from, to) };
};

/** A leader as it is drawn: a thin line with a dot on the place. */
export const leaderAtoms = ({ from, to }: Leader): Atom[] => [
  { do: 'fill', ink: 'dimension', opacity: 1, outline: circleOutline(from, dot) },
  { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[from, to]]) },
];
