import { expandBounds, type Bounds } from '../../geometry/bounds.ts';
import type { Post } from '../post.ts';

/** Where the holes of some posts lie, and how wide the widest is, inches; of no posts nowhere. */
export const dugBy = (
  posts: readonly Post[],
): { readonly bounds: Bounds; readonly widest: number } => {
  let [minX, minY, maxX, maxY, widest] = [Infinity, Infinity, -Infinity, -Infinity, 0];
  for (const { at, hole } of posts) {
    minX = Math.min(minX, at.x);
    minY = Math.min(minY, at.y);
    maxX = Math.max(maxX, at.x);
    maxY = Math.max(maxY, at.y);
    widest = Math.max(widest, hole.diameter);
  }
  return { bounds: expandBounds({ minX, minY, maxX, maxY }, widest / 2), widest };
};
