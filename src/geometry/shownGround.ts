import { boundsOf, expandBounds } from './bounds.ts';
import { cutPolygon } from './cutPolygon.ts';
import { pictureMap } from './pictureMap.ts';
import type { PicturePoint, SitePoint } from './point.ts';
import type { Tie } from './tie.ts';

/** A picture in pixels, and how it lies. */
export interface LaidPicture {
  readonly width: number;
  readonly height: number;
  readonly ties: readonly Tie[];
}

/** Towards the horizon nothing can be told: shown is what lies so deep as a share of the nearest tie. */
const leastDepth = 1 / 16;
/** So many times the reach of its four points a straightened picture is shown beyond them. Ours. */
const beyond = 2;

/**
 * The ground that a picture shows, counter-clockwise or clockwise as it lies, inches: its four corners,
 * of a straightened one what lies before the horizon and not far beyond its four points, where it could
 * not be trusted. Empty where nothing is left.
 */
export const shownGround = ({ width, height, ties }: LaidPicture): SitePoint[] => {
  const map = pictureMap(ties);
  const corners: readonly PicturePoint[] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  if (ties.length === 2) return corners.map(map.toSite);
  const depths = ties.map(({ u, v }) => map.depth({ x: u, y: v }));
  const least = Math.min(...depths) * leastDepth;
  const before = cutPolygon<'picture'>(corners, (point) => map.depth(point) - least);
  const tied = boundsOf(ties);
  if (tied === null) return [];
  const reach = beyond * Math.max(tied.maxX - tied.minX, tied.maxY - tied.minY);
  const { minX, minY, maxX, maxY } = expandBounds(tied, reach);
  return [
    ({ x }: SitePoint) => x - minX,
    ({ x }: SitePoint) => maxX - x,
    ({ y }: SitePoint) => y - minY,
    ({ y }: SitePoint) => maxY - y,
  ].reduce<SitePoint[]>((rest, side) => cutPolygon<'site'>(rest, side), before.map(map.toSite));
};
