import type { BoxShape } from './boxShape.ts';
import { slack } from './tolerance.ts';

/**
 * Whether two turned rectangles share area; touching is not sharing. The second is taken as grown by `margin`
 * on every side. Two rectangles are apart exactly when a cut along a side of one of them parts them
 * (separating axis).
 */
export const shapesOverlap = (a: BoxShape, b: BoxShape, margin = 0): boolean => {
  // most are far apart, which their bounds tell
  const over = margin * (Math.abs(b.cos) + Math.abs(b.sin));
  if (a.minX > b.maxX + over || b.minX - over > a.maxX) return false;
  if (a.minY > b.maxY + over || b.minY - over > a.maxY) return false;
  const x = b.x - a.x;
  const y = b.y - a.y;
  const cos = Math.abs(a.cos * b.cos + a.sin * b.sin);
  const sin = Math.abs(a.cos * b.sin - a.sin * b.cos);
  const width = b.halfWidth + margin;
  const height = b.halfHeight + margin;
  const parted =
    Math.abs(x * a.cos + y * a.sin) >= a.halfWidth + width * cos + height * sin - slack ||
    Math.abs(y * a.cos - x * a.sin) >= a.halfHeight + width * sin + height * cos - slack ||
    Math.abs(x * b.cos + y * b.sin) >= width + a.halfWidth * cos + a.halfHeight * sin - slack ||
    Math.abs(y * b.cos - x * b.sin) >= height + a.halfWidth * sin + a.halfHeight * cos - slack;
  return !parted;
};
