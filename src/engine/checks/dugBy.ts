import { expandBounds, type Bounds } from '../../geometry/bounds.ts';
import type { Post } from '../post.ts';

/** Where the holes of some posts lie, and how wide the widest is, inches; of no posts nowhere. */
export const dugBy = (
  posts: readonly Post[],
): { readonly bounds: Bounds; readonly widest: number } => {
  let [minX, minY, maxX, maxY, widest] = [Infinity, Infinity, -Infinity, -Infinity, 0];
  for (const { at, hole } of posts) {
    if (at.x < minX) minX = at.x;
    if (at.y < minY) minY = at.y;
    if (at.x > maxX) maxX = at.x;
    if (at.y > maxY) maxY = at.y;
    if (hole.diameter > widest) widest = hole.diameter;
  }
  return { bounds: expandBounds({ minX, minY, maxX, maxY }, widest / 2), widest };
};
