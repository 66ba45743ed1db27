import type { Shot } from '../../../src/engine/ground/shot.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { scatter } from '../../geometry/scatter.ts';

/** Shots at some places, as high as a surface is there. */
export const shotsOn = (places: readonly SitePoint[], surface: (at: SitePoint) => number): Shot[] =>
  places.map((at, n) => ({ id: `shot:${n}`, x: at.x, y: at.y, z: surface(at) }));

/** A plane through a height at the origin, rising so much per inch to the east and to the north. */
export const plane =
  (height: number, east: number, north: number) =>
  ({ x, y }: SitePoint): number =>
    height + east * x + north * y;

/** The corners of a square about the origin, 6,000 in on a side, and so many places in it. */
export const yard = (seed: number, count: number): SitePoint[] => [
  { x: -3000, y: -3000 },
  { x: 3000, y: -3000 },
  { x: 3000, y: 3000 },
  { x: -3000, y: 3000 },
  ...scatter(seed, count, 6000),
];

/** Rough ground over that yard. */
export const rough = ({ x, y }: SitePoint): number =>
  40 * Math.sin(x / 300) + 30 * Math.cos(y / 410 + x / 900) + x / 50;
