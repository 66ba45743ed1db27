import type { Gate } from '../../site/gate.ts';
import type { GateLayout } from '../layout.ts';
import type { PostId } from '../post.ts';

/**
 * The post from which a leaf of a gate hangs, the leaf being the one that comes so many from the start of the
 * leg, counted from 0; null for a gate that is not placed.
 */
export const hungFrom = (
  gate: Pick<Gate, 'hingedAt'> | undefined,
  { posts, leaves }: Pick<GateLayout, 'posts' | 'leaves'>,
  n: number,
): PostId | null => {
  if (posts === null || gate === undefined) return null;
  if (leaves.length > 1) return n === 0 ? posts.start : posts.end;
  return posts[gate.hingedAt];
};
