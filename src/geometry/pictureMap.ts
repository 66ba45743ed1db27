import { homographyOf, type FourTies } from './homographyOf.ts';
import type { PicturePoint, SitePoint } from './point.ts';
import { depthAt, projected, type Projective } from './projective.ts';
import { reversed } from './reversed.ts';
import { similarityOf } from './similarityOf.ts';
import type { Tie } from './tie.ts';

/** How a picture lies on the ground, both ways. */
export interface PictureMap {
  /** Pixels to inches. */
  readonly toGround: Projective;
  readonly toSite: (point: PicturePoint) => SitePoint;
  readonly toPicture: (point: SitePoint) => PicturePoint;
  /** As `depthAt`: above zero before the horizon, where the picture shows ground at all. */
  readonly depth: (point: PicturePoint) => number;
}

/**
 * How a picture lies by its ties: turned, scaled and moved by two, straightened by four. RangeError for
 * another number; ties in which `tiesFault` finds a fault give places that are not finite.
 */
export const pictureMap = (ties: readonly Tie[]): PictureMap => {
  const [first, second] = ties;
  const four = ties.length === 4;
  if (first === undefined || second === undefined || (ties.length !== 2 && !four)) {
    throw new RangeError(`ties: expected two or four, found ${ties.length}`);
  }
  const toGround = four ? homographyOf(ties as unknown as FourTies) : similarityOf(first, second);
  const back = reversed(toGround);
  return {
    toGround,
    toSite: (point) => projected(toGround, point),
    toPicture: (point) => projected(back, point),
    depth: (point) => depthAt(toGround, point),
  };
};
