import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { rotated } from '../../geometry/rotated.ts';
import { radians } from '../../units/radians.ts';
import { clippedShares } from './clippedSegment.ts';

/** The part of a straight piece inside a turned box, as shares of the way from `a` to `b`; null where it misses it. */
export const sharesInBox = (
  a: PaperPoint,
  b: PaperPoint,
  { centre, halfWidth, halfHeight, angle }: OrientedBox<'paper'>,
): readonly [number, number] | null => {
  const back = radians(-angle);
  return clippedShares(rotated(a, centre, back), rotated(b, centre, back), {
    minX: centre.x - halfWidth,
    minY: centre.y - halfHeight,
    maxX: centre.x + halfWidth,
    maxY: centre.y + halfHeight,
  });
};
