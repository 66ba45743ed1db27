import type { Layout } from '../../engine/layout.ts';
import { isTerminal, standsByGate, type Post } from '../../engine/post.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sectionText } from './sectionText.ts';

/** What a post is on the cover: which of them are set first, and hung on, is what a crew asks. */
const sorts = {
  gate: phrase`Gate posts`,
  beside: phrase`Posts beside gates`,
  terminal: phrase`Terminal posts`,
  line: phrase`Line posts`,
} as const;

const order = Object.keys(sorts);

const sortOf = (post: Post): keyof typeof sorts => {
  if (standsByGate(post)) return 'beside';
  if (post.gates.length > 0 || post.kind === 'gate') return 'gate';
  return isTerminal(post) ? 'terminal' : 'line';
};

/** How many posts of each sort and size there are: gate posts, other terminals, line posts; largest first. */
export const postRows = (
  { posts }: Pick<Layout, 'posts'>,
  style: LengthStyle,
): readonly (readonly [string, string])[] => {
  const counts = new Map<string, { readonly post: Post; readonly count: number }>();
  for (const post of posts.values()) {
    const name = `${sorts[sortOf(post)]}, ${sectionText(post, style)}`;
    counts.set(name, { post, count: (counts.get(name)?.count ?? 0) + 1 });
  }
  return [...counts]
    .toSorted(
      ([, a], [, b]) =>
        order.indexOf(sortOf(a.post)) - order.indexOf(sortOf(b.post)) || b.post.od - a.post.od,
    )
    .map(([name, { count }]) => [name, String(count)]);
};
