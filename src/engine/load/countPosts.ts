import { isTerminal, type Post } from '../post.ts';
import type { LoadLine } from '../loadLine.ts';

const what = (post: Post): string => {
  if (post.gates.length > 0) return 'Gate post';
  return isTerminal(post) ? 'Terminal post' : 'Line post';
};

/** Posts of one use, pipe and length on one line of the load list. */
export const countPosts = (posts: readonly Post[]): LoadLine[] => {
  const lines = new Map<string, Post[]>();
  for (const post of posts) {
    const key = [what(post), post.pipe, post.od, post.length].join('|');
    lines.set(key, [...(lines.get(key) ?? []), post]);
  }
  return [...lines.values()].flatMap((same) => {
    const [first] = same;
    if (first === undefined) return [];
    return [
      {
        item: `${what(first)}, ${first.pipe}`,
        count: same.length,
        unit: 'each' as const,
        each: first.length,
        rule: 'One a post; height above ground and depth of the hole make the length.',
        source: 'company rule',
        of: { posts: same.map(({ id }) => id), lines: [], gates: [] },
      },
    ];
  });
};
