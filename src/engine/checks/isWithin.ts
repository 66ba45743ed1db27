import type { Bounds } from '../../geometry/bounds.ts';
import type { Post } from '../post.ts';

/** Whether a post stands within bounds, the edges reckoned in. */
export const isWithin = ({ at: { x, y } }: Post, { minX, minY, maxX, maxY }: Bounds): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;
