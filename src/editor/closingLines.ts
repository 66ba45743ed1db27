import { perpendicular } from '../geometry/perpendicular.ts';
import { unitVector } from '../geometry/unitVector.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { SnapLine } from './snapLine.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * The lines through the first point of a chain on which its last corner makes the closing leg
 * square to, or in line with, the first one. None before there are two points apart.
 */
export const closingLines = (points: readonly SitePoint[]): SnapLine[] => {
  const [first, second] = points;
  const way = first && second ? unitVector(first, second) : null;
  if (first === undefined || way === null) return [];
  return [
    {
      kind: 'square',
      origin: first,
      way: perpendicular(way),
      label: phrase`square to the first leg`,
    },
    { kind: 'extension', origin: first, way, label: phrase`in line with the first leg` },
  ];
};
