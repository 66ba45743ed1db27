import type { BoxShape } from './boxShape.ts';
import { slack } from './tolerance.ts';

/** Whether a cut square to a side of `a` parts it from `b`; `cos` and `sin` turn from one to the other. */
const parts = (a: BoxShape, b: BoxShape, cos: number, sin: number): boolean => {
  const x = b.x - a.x;
  const y = b.y - a.y;
  const along = Math.abs(x * a.cos + y * a.sin);
  if (along >= a.halfWidth + b.halfWidth * cos + b.halfHeight * sin - slack) return true;
  const across = Math.abs(y * a.cos - x * a.sin);
  return across >= a.halfHeight + b.halfWidth * sin + b.halfHeight * cos - slack;
};

/**
 * Whether two turned rectangles share area; touching is not sharing. Two rectangles are apart
 * exactly when a cut along a side of one of them parts them (separating axis).
 */
export const shapesOverlap = (a: BoxShape, b: BoxShape): boolean => {
  // most are far apart, which their bounds tell
  if (a.minX > b.maxX || b.minX > a.maxX || a.minY > b.maxY || b.minY > a.maxY) return false;
  const cos = Math.abs(a.cos * b.cos + a.sin * b.sin);
  const sin = Math.abs(a.cos * b.sin - a.sin * b.cos);
  return !parts(a, b, cos, sin) && !parts(b, a, cos, sin);
};
