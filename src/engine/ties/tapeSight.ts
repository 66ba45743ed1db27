import { distance } from '../../geometry/distance.ts';
import { piecesInside } from '../../geometry/piecesInside.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Polygon } from '../../geometry/polygon.ts';
import type { Feature } from '../../site/feature.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';

/** So far beside a tape a wall may be drawn and the tape still lies along it, inches. Ours. */
const beside = 3;

/** The outlines of the buildings of a site. */
export const buildingsOf = (site: Site): Polygon<'site'>[] =>
  Object.values<Feature>(site.features).flatMap((feature) =>
    feature.kind === 'building'
      ? [verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? [])]
      : [],
  );

/** How far a straight way, moved to its left by so much, runs within a building; inches. */
const within = (
  [from, to]: readonly [SitePoint, SitePoint],
  left: number,
  building: Polygon<'site'>,
): number => {
  const share = left / distance(from, to);
  const off = { x: (from.y - to.y) * share, y: (to.x - from.x) * share };
  const start = { x: from.x + off.x, y: from.y + off.y };
  const end = { x: to.x + off.x, y: to.y + off.y };
  return piecesInside({ start, end }, building).reduce(
    (sum, piece) => sum + piece.to - piece.from,
    0,
  );
};

/** Whether a tape can be pulled straight between two places: through no building, along a wall it can. */
export const tapeSight = (
  buildings: readonly Polygon<'site'>[],
  from: SitePoint,
  to: SitePoint,
): boolean =>
  distance(from, to) <= beside ||
  buildings.every((building) =>
    [-beside, beside].some((left) => within([from, to], left, building) <= beside),
  );
