import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { edges } from '../../geometry/polygon.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { lineStrip } from './lineStrips.ts';

const dot = 0.018;

/** A leader as drawn, and the strip that it takes up; none where the text stands on its place. */
export interface Leader {
  readonly atoms: readonly Atom[];
  readonly strip: OrientedBox<'paper'>;
}

/** A thin line with a dot from the place that a text speaks of to the nearest edge of the text. */
export const leaderLine = (from: PaperPoint, box: OrientedBox<'paper'>): Leader => {
  const [nearest] = edges(corners(box))
    .map((edge) => nearestOnSegment(from, edge))
    .sort((a, b) => a.distance - b.distance);
  const to = nearest?.point ?? from;
  return {
    atoms: [
      { do: 'fill', ink: 'dimension', opacity: 1, outline: circleOutline(from, dot) },
      { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[from, to]]) },
    ],
    strip: lineStrip(from, to),
  };
};
