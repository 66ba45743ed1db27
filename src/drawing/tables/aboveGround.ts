import type { Layout, LineLayout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { shortStyle } from './shortStyle.ts';
import { standsOf } from './standRows.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Every post that the hole table of a line lists. */
const listedPosts = (line: LineLayout, layout: Layout): Post[] => [
  ...line.runs.flatMap(({ posts }) => posts.flatMap(({ post }) => layout.posts.get(post) ?? [])),
  ...standsOf(line, layout).flatMap(({ posts }) => posts),
];

const isLinePost = ({ kind }: Post): boolean => kind === 'line' || kind === 'bend';

/**
 * How high the posts of a fence line stand over the ground as one sentence, where one says it: all
 * alike as they are written, or line posts alike and all others alike. Else null: the hole table
 * has to list them.
 */
export const aboveGround = (line: LineLayout, layout: Layout, site: Site): string | null => {
  const posts = listedPosts(line, layout);
  const heights = (some: readonly Post[]): string[] => [
    ...new Set(some.map(({ above }) => formatLength(above, shortStyle(site.lengths)))),
  ];
  const all = heights(posts);
  const [first = ''] = all;
  if (all.length === 1) return phrase`Above ground: all posts ${first}.`;
  const lines = heights(posts.filter(isLinePost));
  const others = heights(posts.filter((post) => !isLinePost(post)));
  if (lines.length !== 1 || others.length !== 1) return null;
  const [own = '', other = ''] = [lines[0], others[0]];
  return phrase`Above ground: line posts ${own}, all others ${other}.`;
};
