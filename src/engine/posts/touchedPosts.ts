import type { LineId } from '../../site/ids.ts';
import type { Post, PostId, Posts } from '../post.ts';
import { SharedPosts } from './sharedPosts.ts';

/** Posts that came, went or are other objects than before, and the lines that any of them serves or served. */
export interface Touched {
  readonly posts: ReadonlySet<PostId>;
  readonly lines: ReadonlySet<LineId>;
}

const none: readonly Post[] = [];

/** Calls `touch` for every post of some that is not among the others. */
const apart = (
  some: readonly Post[],
  others: readonly Post[],
  touch: (post: Post) => void,
): void => {
  for (const post of some) if (!others.includes(post)) touch(post);
};

/** The same posts by looking for each by its id. */
const apartFrom = (some: Posts, others: Posts, touch: (post: Post) => void): void => {
  for (const post of some.values()) if (others.get(post.id) !== post) touch(post);
};

/** What of the posts of a layout is touched by an edit; only the drawers that it does not share are looked into. */
export const touchedPosts = (before: Posts, now: Posts): Touched => {
  const [posts, lines] = [new Set<PostId>(), new Set<LineId>()];
  const touch = (post: Post): void => {
    posts.add(post.id);
    for (const line of post.lines) lines.add(line);
  };
  const shared = before instanceof SharedPosts && now instanceof SharedPosts;
  if (shared && before.drawers.length === now.drawers.length) {
    // posts of one id lie in the same drawer of both
    now.drawers.forEach((own, n) => {
      const old = before.drawers[n] ?? none;
      if (own === old) return;
      apart(own, old, touch);
      apart(old, own, touch);
    });
  } else {
    apartFrom(now, before, touch);
    apartFrom(before, now, touch);
  }
  return { posts, lines };
};
