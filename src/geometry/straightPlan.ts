import { boundsOf } from './bounds.ts';
import { composed } from './composed.ts';
import { determinant } from './determinant.ts';
import { pictureMap } from './pictureMap.ts';
import type { SitePoint } from './point.ts';
import { depthAt, type Projective } from './projective.ts';
import { reversed } from './reversed.ts';
import { shownGround, type LaidPicture } from './shownGround.ts';

/** How a straightened picture is made: its pixels lie square on the ground, y down to the south. */
export interface StraightPlan {
  readonly width: number;
  readonly height: number;
  /** The ground at its upper left corner, inches. */
  readonly corner: SitePoint;
  /** Inches of ground to a pixel. */
  readonly pixel: number;
  /** From its pixels to those of the picture as it was taken; a pixel before the horizon has a depth above zero. */
  readonly toPicture: Projective;
}

/**
 * The picture to make once of one that was taken at an angle: upright over all the ground that it shows,
 * with as many pixels as the nearest of its four points has, at most `longest` on its longer side. Null
 * where it shows no ground.
 */
export const straightPlan = (laid: LaidPicture, longest: number): StraightPlan | null => {
  const ground = boundsOf(shownGround(laid));
  if (ground === null) return null;
  const [across, up] = [ground.maxX - ground.minX, ground.maxY - ground.minY];
  if (!(across > 0 && up > 0)) return null;
  const map = pictureMap(laid.ties);
  const area = Math.abs(determinant(map.toGround));
  const finest = laid.ties.map(({ u, v }) => Math.sqrt(area / map.depth({ x: u, y: v }) ** 3));
  const pixel = Math.max(Math.min(...finest), Math.max(across, up) / longest);
  const corner = { x: ground.minX, y: ground.maxY };
  const back = composed(reversed(map.toGround), [
    ...([pixel, 0, corner.x] as const),
    ...([0, -pixel, corner.y] as const),
    ...([0, 0, 1] as const),
  ]);
  // of either sign: by one of the ties, which lie before the horizon, it is made to be above zero
  const [{ x, y } = corner] = laid.ties;
  const sign = Math.sign(depthAt(back, { x: (x - corner.x) / pixel, y: (corner.y - y) / pixel }));
  return {
    width: Math.max(1, Math.min(longest, Math.ceil(across / pixel))),
    height: Math.max(1, Math.min(longest, Math.ceil(up / pixel))),
    corner,
    pixel,
    toPicture: back.map((value) => value * sign) as unknown as Projective,
  };
};
