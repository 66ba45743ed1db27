import type { Layout } from '../../../engine/layout.ts';
import { boundsOf, type Bounds } from '../../../geometry/bounds.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { trackAt, trackLength } from '../../../geometry/track.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import { smallestLegible } from './smallestLegible.ts';
import { scalesOf, type Scale } from '../scales.ts';

/** A part of the ground that has a sheet of its own: inches, and its column from the west. */
export interface PlanTile {
  readonly bounds: Bounds;
  readonly column: number;
}

/** The parts that a plan is drawn in besides the whole, all to one scale. */
export interface PlanTiles {
  readonly scale: Scale;
  readonly tiles: readonly PlanTile[];
}

/** So many parts are still a plan; with more the next smaller scale is taken. */
const mostTiles = 12;

const isIn = ({ x, y }: SitePoint, { minX, maxX, minY, maxY }: Bounds): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

/** Points of the fence lie no farther apart than this share of a part. */
const fine = 1 / 40;
/** A run that goes on for ever is looked at in no more places. */
const mostPoints = 10_000;

/** Points along all fence, so near to one another that none of its parts is missed; inches. */
const fencePoints = ({ lines }: Layout, apart: number): SitePoint[] =>
  Object.values(lines).flatMap(({ runs }) =>
    runs.flatMap((run) => {
      const length = trackLength(run);
      const count = Math.max(1, Math.min(mostPoints, Math.ceil(length / apart)));
      return Array.from({ length: count + 1 }, (_, n) => trackAt(run, (length * n) / count));
    }),
  );

/** How many equal parts of a length have room in a window. */
const count = (length: number, room: number): number =>
  Math.max(1, Math.ceil(length / room - 1e-9));

interface Column {
  readonly column: number;
  readonly minX: number;
  readonly maxX: number;
}

/** The parts of one column from the north: about the fence in it, and as many as that needs. */
const columnTiles = (
  { column, minX, maxX }: Column,
  points: readonly SitePoint[],
  room: number,
): PlanTile[] => {
  const own = boundsOf(points.filter(({ x }) => x >= minX && x <= maxX));
  if (own === null) return [];
  const high = own.maxY - own.minY;
  const rows = count(high, room);
  // one part alone takes all the room it has
  const spare = rows === 1 ? (room - high) / 2 : 0;
  const each = (high + 2 * spare) / rows;
  return Array.from({ length: rows }, (_, row): PlanTile => {
    const maxY = own.maxY + spare - row * each;
    return { column, bounds: { minX, maxX, minY: maxY - each, maxY } };
  }).filter(({ bounds }) => points.some((point) => isIn(point, bounds)));
};

const tilesAt = (
  layout: Layout,
  ground: Bounds,
  room: { readonly width: number; readonly height: number },
): PlanTile[] => {
  const wide = ground.maxX - ground.minX;
  const columns = count(wide, room.width);
  if (columns > mostTiles) return [];
  const points = fencePoints(layout, fine * Math.min(room.width, room.height));
  return Array.from({ length: columns }, (_, column) => ({
    column,
    minX: ground.minX + (wide * column) / columns,
    maxX: ground.minX + (wide * (column + 1)) / columns,
  })).flatMap((column) => columnTiles(column, points, room.height));
};

/**
 * The parts with fence in them that a plan is drawn in besides the whole: columns of one width from the
 * west, in each about its fence from the north; null where the whole is large enough (`whole`, its scale), or nothing larger has so few sheets.
 * `room` is what a sheet has for the ground of a part, paper inches.
 */
export const planTiles = (
  layout: Layout,
  ground: Bounds,
  room: { readonly width: number; readonly height: number },
  { whole, system }: { readonly whole: Scale; readonly system: LengthSystem },
): PlanTiles | null => {
  const least = smallestLegible(system);
  if (whole.ratio <= least || room.width <= 0 || room.height <= 0) return null;
  const larger = scalesOf(system).filter(({ ratio }) => ratio >= least && ratio < whole.ratio);
  for (const scale of larger) {
    const tiles = tilesAt(layout, ground, {
      width: room.width * scale.ratio,
      height: room.height * scale.ratio,
    });
    if (tiles.length > 1 && tiles.length <= mostTiles) return { scale, tiles };
  }
  return null;
};
