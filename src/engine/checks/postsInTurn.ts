import type { Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';

/**
 * All posts in the order of their tags, those beside the fence last: as the values of `posts`, which
 * take twenty times as long to list on a large site.
 */
export const postsInTurn = ({ tagged, stands }: Pick<LaidLines, 'tagged' | 'stands'>): Post[] => {
  const all: Post[] = [];
  for (const own of [...tagged, stands]) for (const post of own) all.push(post);
  return all;
};
