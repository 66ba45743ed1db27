import { inches } from '../../units/inches.ts';
import type { Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';

/** By how much more than on level ground posts stand above it, inches; those that do not are left out. */
export type Rises = ReadonlyMap<PostId, number>;

/**
 * By how much more than on level ground the fabric of a run, so high (inches), stands above the ground
 * at its posts: the most of the stretches that meet at each.
 */
export const risesOn = ({ ground }: Run, fabricHeight: number): Rises => {
  const rises = new Map<PostId, number>();
  for (const { stands, posts } of ground?.fences ?? []) {
    stands.forEach((id, n) => {
      const rise = (posts[n]?.height ?? fabricHeight) - fabricHeight;
      if (rise > (rises.get(id) ?? 0)) rises.set(id, rise);
    });
  }
  return rises;
};

/** A post as much higher (inches) as the fabric on sloping ground asks for. */
export const raised = (post: Post, rise: number): Post => {
  if (rise === 0) return post;
  const above = inches(post.above + rise);
  return { ...post, above, length: inches(above + post.hole.depth) };
};
