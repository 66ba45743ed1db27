import type { PostId } from '../engine/post.ts';
import type { PinId } from '../site/ids.ts';

/** The pin that holds a post at its place; null for a post that the bays or the grade place. */
export const pinOf = (post: PostId): PinId | null =>
  post.startsWith('post:pin:') ? (post.slice('post:'.length) as PinId) : null;
