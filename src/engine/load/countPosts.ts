import { spot } from '../../geometry/tolerance.ts';
import type { Carry } from '../carry/carry.ts';
import type { LoadLine } from '../loadLine.ts';
import { isTerminal, type Post, type PostId } from '../post.ts';
import { grouped } from './grouped.ts';
import type { LoadGroup } from './loadGroup.ts';

const what = (post: Post): string => {
  if (post.kind === 'roller') return 'Roller post';
  if (post.kind === 'hold-open') return 'Hold-open post';
  if (post.kind === 'stop') return 'Centre stop post';
  if (post.gates.length > 0) return 'Gate post';
  return isTerminal(post) ? 'Terminal post' : 'Line post';
};

/** Lengths that no tape can tell apart are one: they differ by how they were added up. */
const cut = ({ length }: Post): number => Math.round(length / spot);

/** Posts of one use, pipe and length. */
interface Alike {
  readonly kind: string;
  readonly first: Post;
  readonly ids: readonly PostId[];
}

const alikeOf = (posts: readonly Post[]): readonly Alike[] =>
  grouped(posts, (post) => [what(post), post.pipe, post.od, cut(post)].join('|')).flatMap(
    (same) => {
      const [first] = same;
      if (first === undefined) return [];
      const kind = [what(first), first.pipe, first.od, cut(first)].join('|');
      return [{ kind, first, ids: same.map(({ id }) => id) }];
    },
  );

/** Posts of one use, pipe and length on one line of the load list. */
export const countPosts = (groups: readonly LoadGroup[], carry: Carry): LoadLine[] => {
  const known = carry.shelf<readonly Alike[]>('posts alike');
  const all = groups.flatMap(({ key, posts }) => known.take(key, [posts], () => alikeOf(posts)));
  return grouped(all, ({ kind }) => kind).flatMap((same) => {
    const [one] = same;
    if (one === undefined) return [];
    const { first } = one;
    const posts: PostId[] = [];
    for (const { ids } of same) for (const id of ids) posts.push(id);
    return [
      {
        item: `${what(first)}, ${first.pipe}`,
        count: posts.length,
        unit: 'each' as const,
        each: first.length,
        rule: 'One a post; height above ground and depth of the hole make the length.',
        source: 'company rule',
        of: { posts, lines: [], gates: [] },
      },
    ];
  });
};
