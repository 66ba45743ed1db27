import { spot } from '../../geometry/tolerance.ts';
import { isTerminal, type Post } from '../post.ts';
import type { LoadLine } from '../loadLine.ts';
import { grouped } from './grouped.ts';

const what = (post: Post): string => {
  if (post.kind === 'roller') return 'Roller post';
  if (post.kind === 'hold-open') return 'Hold-open post';
  if (post.kind === 'stop') return 'Centre stop post';
  if (post.gates.length > 0) return 'Gate post';
  return isTerminal(post) ? 'Terminal post' : 'Line post';
};

/** Lengths that no tape can tell apart are one: they differ by how they were added up. */
const cut = ({ length }: Post): number => Math.round(length / spot);

/** Posts of one use, pipe and length on one line of the load list. */
export const countPosts = (posts: readonly Post[]): LoadLine[] =>
  grouped(posts, (post) => [what(post), post.pipe, post.od, cut(post)].join('|')).flatMap(
    (same) => {
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
    },
  );
