import type { SitePoint } from '../../../geometry/point.ts';
import { radians } from '../../../units/radians.ts';
import type { Primitive } from '../../primitive.ts';
import { letters } from '../letters.ts';
import { planAnchor } from './planAnchor.ts';
import type { PlanTile } from './planTiles.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Edge = readonly [SitePoint, SitePoint];

/** The edge of a part that another begins at; null where the two do not meet. */
const edgeWith = (tile: PlanTile, other: PlanTile): Edge | null => {
  const [a, b] = [tile.bounds, other.bounds];
  if (tile.column === other.column) {
    if (a.minY !== b.maxY && a.maxY !== b.minY) return null;
    const y = a.minY === b.maxY ? a.minY : a.maxY;
    return [
      { x: a.minX, y },
      { x: a.maxX, y },
    ];
  }
  if (Math.abs(tile.column - other.column) !== 1) return null;
  const [low, high] = [Math.max(a.minY, b.minY), Math.min(a.maxY, b.maxY)];
  if (low >= high) return null;
  const x = other.column > tile.column ? a.maxX : a.minX;
  return [
    { x, y: low },
    { x, y: high },
  ];
};

/** Where along a match line its words stand: the fence crosses it elsewhere, most likely. */
const early = 0.2;

const matchLine = (points: Edge, sheet: number): Primitive[] => {
  const [from, to] = points;
  const isUpright = from.x === to.x;
  return [
    { kind: 'polyline', points, closed: false, pen: 'match line' },
    {
      kind: 'text',
      at: { x: from.x + (to.x - from.x) * early, y: from.y + (to.y - from.y) * early },
      text: phrase`MATCH LINE, SHEET ${sheet}`,
      size: letters.small,
      rise: 0.05,
      angle: radians(isUpright ? Math.PI / 2 : 0),
      ink: 'text',
      weight: 'bold',
      to: planAnchor(sheet),
    },
  ];
};

/**
 * Where a part of a plan meets its neighbours: a line along each edge that it shares with one, with the
 * sheet of that. `sheets` are the numbers of the sheets of all parts, in their order.
 */
export const matchLines = (
  tile: PlanTile,
  tiles: readonly PlanTile[],
  sheets: readonly number[],
): Primitive[] =>
  tiles.flatMap((other, n) => {
    const edge = other === tile ? null : edgeWith(tile, other);
    return edge === null ? [] : matchLine(edge, sheets[n] ?? 0);
  });
