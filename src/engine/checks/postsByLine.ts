import type { LineId } from '../../site/ids.ts';
import type { Post } from '../post.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { postsInTurn } from './postsInTurn.ts';

/** Every post once, under the first of the lines that it serves, in the order of their tags. */
export const postsByLine = (
  laid: Pick<LaidLines, 'tagged' | 'stands'>,
): ReadonlyMap<LineId, readonly Post[]> => {
  const byLine = new Map<LineId, Post[]>();
  for (const post of postsInTurn(laid)) {
    const [line] = post.lines;
    if (line === undefined) continue;
    const own = byLine.get(line);
    if (own === undefined) byLine.set(line, [post]);
    else own.push(post);
  }
  return byLine;
};
