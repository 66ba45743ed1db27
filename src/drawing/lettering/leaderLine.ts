import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import { corners, type OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { edges } from '../../geometry/polygon.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';

const dot = 0.018;

/** A thin line with a dot from the place that a text speaks of to the nearest edge of the text. */
export const leaderLine = (from: PaperPoint, box: OrientedBox<'paper'>): Atom[] => {
  const [nearest] = edges(corners(box))
    .map((edge) => nearestOnSegment(from, edge))
    .sort((a, b) => a.distance - b.distance);
  if (nearest === undefined) return [];
  return [
    { do: 'fill', ink: 'dimension', opacity: 1, outline: circleOutline(from, dot) },
    { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[from, nearest.point]]) },
  ];
};
