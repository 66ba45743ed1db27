import { shapeSize, type BoxShapes } from './boxShapes.ts';
import { slack } from './tolerance.ts';

/**
 * Whether two turned rectangles share area, the nth shape of a list and the first of another; touching is not
 * sharing. The second is taken as grown by `margin` on every side. Two rectangles are apart exactly when a cut along
 * a side of one of them parts them (separating axis).
 */
export const shapesOverlap = (
  ones: BoxShapes,
  n: number,
  other: BoxShapes,
  margin = 0,
): boolean => {
  const a = n * shapeSize;
  const otherCos = other[8] ?? 0;
  const otherSin = other[9] ?? 0;
  // most are far apart, which their bounds tell
  const over = margin * (Math.abs(otherCos) + Math.abs(otherSin));
  if ((ones[a] ?? 0) > (other[2] ?? 0) + over) return false;
  if ((other[0] ?? 0) - over > (ones[a + 2] ?? 0)) return false;
  if ((ones[a + 1] ?? 0) > (other[3] ?? 0) + over) return false;
  if ((other[1] ?? 0) - over > (ones[a + 3] ?? 0)) return false;
  const ownCos = ones[a + 8] ?? 0;
  const ownSin = ones[a + 9] ?? 0;
  const x = (other[4] ?? 0) - (ones[a + 4] ?? 0);
  const y = (other[5] ?? 0) - (ones[a + 5] ?? 0);
  const cos = Math.abs(ownCos * otherCos + ownSin * otherSin);
  const sin = Math.abs(ownCos * otherSin - ownSin * otherCos);
  const ownWidth = ones[a + 6] ?? 0;
  const ownHeight = ones[a + 7] ?? 0;
  const width = (other[6] ?? 0) + margin;
  const height = (other[7] ?? 0) + margin;
  const parted =
    Math.abs(x * ownCos + y * ownSin) >= ownWidth + width * cos + height * sin - slack ||
    Math.abs(y * ownCos - x * ownSin) >= ownHeight + width * sin + height * cos - slack ||
    Math.abs(x * otherCos + y * otherSin) >= width + ownWidth * cos + ownHeight * sin - slack ||
    Math.abs(y * otherCos - x * otherSin) >= height + ownWidth * sin + ownHeight * cos - slack;
  return !parted;
};
