import { nearestOnBox } from '../../geometry/nearestOnBox.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
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

/** The leader from a place to the nearest edge of a text. */
export const leaderLine = (from: PaperPoint, box: OrientedBox<'paper'>): Leader => {
  const to = nearestOnBox(from, box);
  return { from, to, strip: lineStrip(from, to) };
};

/** A leader as it is drawn: a thin line with a dot on the place. */
export const leaderAtoms = ({ from, to }: Leader): Atom[] => [
  { do: 'fill', ink: 'dimension', opacity: 1, outline: circleOutline(from, dot) },
  { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[from, to]]) },
];
