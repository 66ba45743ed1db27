import type { LineId } from '../../site/ids.ts';
import type { Post, PostId, Posts } from '../post.ts';
import { SharedPosts } from './sharedPosts.ts';

/** Posts that came, went or are other objects than before, and the lines that any of them serves or served. */
export interface Touched {
  readonly posts: ReadonlySet<PostId>;
  readonly lines: ReadonlySet<LineId>;
}

const none: readonly Post[] = [];

/** The posts of each of two layouts that lie in other drawers than those of the other, or all where they share none. */
const unshared = (a: Posts, b: Posts): Iterable<Post> => {
  if (!(a instanceof SharedPosts && b instanceof SharedPosts))
    return [...a.values(), ...b.values()];
  if (a.drawers.length !== b.drawers.length) return [...a.drawers, ...b.drawers].flat();
  return a.drawers.flatMap((own, n) => {
    const other = b.drawers[n] ?? none;
    return own === other ? none : [...own, ...other];
  });
};

/** What of the posts of a layout is touched by an edit; only the drawers that it does not share are looked into. */
export const touchedPosts = (before: Posts, now: Posts): Touched => {
  const [posts, lines] = [new Set<PostId>(), new Set<LineId>()];
  for (const post of unshared(before, now)) {
    if (before.get(post.id) === now.get(post.id)) continue;
    posts.add(post.id);
    for (const line of post.lines) lines.add(line);
  }
  return { posts, lines };
};
