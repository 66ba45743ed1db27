import { spot } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import type { LoadLine } from '../loadLine.ts';
import { isTerminal, type Post } from '../post.ts';
import { pipeOf } from '../structure/pipeOf.ts';
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

/** Posts of one use, pipe and length on one line of the load list, the longest of a use first. */
export const countPosts = (posts: readonly Post[], site: Site): LoadLine[] =>
  grouped(posts, (post) => [what(post), post.pipe, post.od, post.section, cut(post)].join('|'))
    .flatMap((same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      const wall = pipeOf(site, first)?.wall ?? null;
      const across = `${first.od}${wall === null ? '' : `x${wall}`}`;
      const size = first.section === 'square' ? `${across}-square` : across;
      return [
        {
          part: 'posts',
          code: `${what(first).toLowerCase().replaceAll(' ', '-')} ${size}`,
          item: `${what(first)}, ${first.pipe}`,
          count: same.length,
          unit: 'each',
          each: first.length,
          sold: null,
          rule: 'One a post; height above ground and depth of the hole make the length.',
          source: 'company rule',
          of: { posts: same.map(({ id }) => id), lines: [], gates: [] },
        },
      ];
    })
    .toSorted((a, b) =>
      a.item < b.item ? -1 : a.item > b.item ? 1 : (b.each ?? 0) - (a.each ?? 0),
    );
