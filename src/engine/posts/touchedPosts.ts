import type { LineId } from '../../site/ids.ts';
import type { Post, PostId, Posts } from '../post.ts';
import { SharedPosts } from './sharedPosts.ts';

/** Posts that came, went or are other objects than before, and the lines that any of them serves or served. */
export interface Touched {
  /** As they are now; null for those that went. */
  readonly posts: ReadonlyMap<PostId, Post | null>;
  readonly lines: ReadonlySet<LineId>;
}

const none: readonly Post[] = [];

/** The posts of some that are not among others. */
const apart = (some: readonly Post[], others: readonly Post[]): readonly Post[] =>
  some.filter((post) => !others.includes(post));

/** The same posts by looking for each by its id. */
const apartFrom = (some: Posts, others: Posts): readonly Post[] =>
  [...some.values()].filter((post) => others.get(post.id) !== post);

/** What of the posts of a layout is touched by an edit; only the drawers that it does not share are looked into. */
export const touchedPosts = (before: Posts, now: Posts): Touched => {
  const [posts, lines] = [new Map<PostId, Post | null>(), new Set<LineId>()];
  const touch = (some: readonly Post[], are: 'there' | 'gone'): void => {
    for (const post of some) {
      posts.set(post.id, are === 'there' ? post : null);
      for (const line of post.lines) lines.add(line);
    }
  };
  const shared = before instanceof SharedPosts && now instanceof SharedPosts;
  if (shared && before.drawers.length === now.drawers.length) {
    // posts of one id lie in the same drawer of both
    now.drawers.forEach((own, n) => {
      const old = before.drawers[n] ?? none;
      if (own === old) return;
      touch(apart(old, own), 'gone');
      touch(apart(own, old), 'there');
    });
  } else {
    touch(apartFrom(before, now), 'gone');
    touch(apartFrom(now, before), 'there');
  }
  return { posts, lines };
};
