import { inches } from '../../units/inches.ts';
import type { Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';

/**
 * By how much more than on level ground the fabric beside each post stands above the ground there,
 * inches: the most of all stretches that meet at it.
 */
const risesOf = (runs: readonly Run[], heightOf: (run: Run) => number) => {
  const rises = new Map<PostId, number>();
  for (const run of runs) {
    for (const { stands, posts } of run.ground?.fences ?? []) {
      stands.forEach((id, n) => {
        const rise = (posts[n]?.height ?? heightOf(run)) - heightOf(run);
        rises.set(id, Math.max(rises.get(id) ?? 0, rise));
      });
    }
  }
  return rises;
};

/** The posts, each as much higher as the fabric on sloping ground asks for. */
export const raised = (
  posts: readonly Post[],
  runs: readonly Run[],
  heightOf: (run: Run) => number,
): readonly Post[] => {
  const rises = risesOf(runs, heightOf);
  if (rises.size === 0) return posts;
  return posts.map((post) => {
    const rise = rises.get(post.id) ?? 0;
    if (rise === 0) return post;
    const above = inches(post.above + rise);
    return { ...post, above, length: inches(above + post.hole.depth) };
  });
};
