import type { Run } from '../layout.ts';
import { isTerminal, type Post, type PostId } from '../post.ts';

/** A, B … Z, AA, AB … for 0, 1 … 25, 26, 27 …. */
export const letters = (n: number): string => {
  const last = String.fromCharCode(65 + (n % 26));
  return n < 26 ? last : letters(Math.floor(n / 26) - 1) + last;
};

/** Terminal posts tagged by letters and line posts by numbers, in the order in which runs meet them. */
export const tagged = (posts: readonly Post[], runs: readonly Run[]): Record<PostId, Post> => {
  const known = new Map(posts.map((post) => [post.id, post]));
  const named: Record<PostId, Post> = {};
  let [terminals, lines] = [0, 0];
  for (const { post: id } of runs.flatMap((run) => run.posts)) {
    const post = known.get(id);
    if (post === undefined || named[id] !== undefined) continue;
    const tag = isTerminal(post) ? letters(terminals++) : `${(lines += 1)}`;
    named[id] = { ...post, tag };
  }
  return named;
};
