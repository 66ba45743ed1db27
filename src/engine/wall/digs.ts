import type { WallTop } from '../../site/wallTop.ts';

/**
 * Whether a post reaches into the ground: always where it stands in it (null), on a wall only where
 * its core is deeper than the wall stands over the ground. A plate never does.
 */
export const digs = (wall: WallTop | null): boolean =>
  wall === null || (wall.set.kind === 'cored' && wall.set.depth > wall.height);
