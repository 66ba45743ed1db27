import type { LineId } from '../../site/ids.ts';
import type { Post, Posts } from '../post.ts';
import { SharedPosts } from './sharedPosts.ts';

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

/** The lines of which any post came, went or is another object than before. */
export const touchedLines = (before: Posts, now: Posts): ReadonlySet<LineId> => {
  const touched = new Set<LineId>();
  for (const post of unshared(before, now))
    if (before.get(post.id) !== now.get(post.id)) for (const line of post.lines) touched.add(line);
  return touched;
};
