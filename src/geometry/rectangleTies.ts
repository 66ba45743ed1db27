import { add } from './add.ts';
import type { FourTies } from './homographyOf.ts';
import type { PictureMap } from './pictureMap.ts';
import { perpendicular } from './perpendicular.ts';
import type { PicturePoint } from './point.ts';
import { scale } from './scale.ts';
import { signedArea } from './signedArea.ts';
import { tieOf } from './tie.ts';
import { unitVector } from './unitVector.ts';

/** Four corners of a picture, one after the other. */
export type FourCorners = readonly [PicturePoint, PicturePoint, PicturePoint, PicturePoint];

/**
 * The ties by which four corners on a picture, taken round, are those of a rectangle: `first` inches from
 * the first corner to the second, `second` from there to the third. The first corner stays where it lies
 * and the first side keeps its way and the hand on which the rest is. Null for corners that lie on one spot
 * or on one line.
 */
export const rectangleTies = (
  { toSite }: PictureMap,
  corners: FourCorners,
  { first, second }: { readonly first: number; readonly second: number },
): FourTies | null => {
  const [a, b, c, d] = corners;
  const lies = [toSite(a), toSite(b), toSite(c), toSite(d)] as const;
  const way = unitVector(lies[0], lies[1]);
  const turn = Math.sign(signedArea(lies));
  if (way === null || turn === 0) return null;
  const along = scale(way, first);
  const across = scale(perpendicular(way), turn * second);
  return [
    tieOf(a, lies[0]),
    tieOf(b, add(lies[0], along)),
    tieOf(c, add(add(lies[0], along), across)),
    tieOf(d, add(lies[0], across)),
  ];
};
