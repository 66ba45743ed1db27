import type { Layout } from '../../engine/layout.ts';
import { isTerminal, standsByGate, type Post } from '../../engine/post.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';

/** What a post is on the cover: which of them are set first, and hung on, is what a crew asks. */
const sortOf = (post: Post): string => {
  if (standsByGate(post)) return 'Posts beside gates';
  if (post.gates.length > 0 || post.kind === 'gate') return 'Gate posts';
  return isTerminal(post) ? 'Terminal posts' : 'Line posts';
};

const order = ['Gate posts', 'Posts beside gates', 'Terminal posts', 'Line posts'];

const sizeOf = ({ od, section }: Post, style: LengthStyle): string =>
  `${pipeSize(od, style)} ${section === 'square' ? 'square' : 'OD'}`;

/** How many posts of each sort and size there are: gate posts, other terminals, line posts; largest first. */
export const postRows = (
  { posts }: Pick<Layout, 'posts'>,
  style: LengthStyle,
): readonly (readonly [string, string])[] => {
  const counts = new Map<string, { readonly post: Post; readonly count: number }>();
  for (const post of Object.values<Post>(posts)) {
    const name = `${sortOf(post)}, ${sizeOf(post, style)}`;
    counts.set(name, { post, count: (counts.get(name)?.count ?? 0) + 1 });
  }
  return [...counts]
    .toSorted(
      ([, a], [, b]) =>
        order.indexOf(sortOf(a.post)) - order.indexOf(sortOf(b.post)) || b.post.od - a.post.od,
    )
    .map(([name, { count }]) => [name, String(count)]);
};
