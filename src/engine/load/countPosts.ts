import { spot } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import type { LoadLine } from '../loadLine.ts';
import { isTerminal, type Post } from '../post.ts';
import { pipeOf } from '../structure/pipeOf.ts';
import { grouped } from './grouped.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';

type Use =
  | 'roller post'
  | 'hold-open post'
  | 'centre stop post'
  | 'gate post'
  | 'terminal post'
  | 'line post';

const useOf = (post: Post): Use => {
  if (post.kind === 'roller') return 'roller post';
  if (post.kind === 'hold-open') return 'hold-open post';
  if (post.kind === 'stop') return 'centre stop post';
  if (post.gates.length > 0) return 'gate post';
  return isTerminal(post) ? 'terminal post' : 'line post';
};

const what: Readonly<Record<Use, string>> = {
  'roller post': phrase`Roller post`,
  'hold-open post': phrase`Hold-open post`,
  'centre stop post': phrase`Centre stop post`,
  'gate post': phrase`Gate post`,
  'terminal post': phrase`Terminal post`,
  'line post': phrase`Line post`,
};

/** Lengths that no tape can tell apart are one: they differ by how they were added up. */
const cut = ({ length }: Post): number => Math.round(length / spot);

const inTurn = (a: Post, b: Post): number => {
  const [one, other] = [`${useOf(a)}, ${a.pipe}`, `${useOf(b)}, ${b.pipe}`];
  return one < other ? -1 : one > other ? 1 : b.length - a.length;
};

/** Posts of one use, pipe and length on one line of the load list, the longest of a use first. */
export const countPosts = (posts: readonly Post[], site: Site): LoadLine[] =>
  grouped(posts, (post) => [useOf(post), post.pipe, post.od, post.section, cut(post)].join('|'))
    .toSorted(([a], [b]) => (a === undefined || b === undefined ? 0 : inTurn(a, b)))
    .flatMap((same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      const wall = pipeOf(site, first)?.wall ?? null;
      const across = `${first.od}${wall === null ? '' : `x${wall}`}`;
      const size = first.section === 'square' ? `${across}-square` : across;
      return [
        {
          part: 'posts',
          code: `${useOf(first).replaceAll(' ', '-')} ${size}`,
          item: phrase`${what[useOf(first)]}, ${asItIs(first.pipe)}`,
          count: same.length,
          unit: 'each',
          each: first.length,
          sold: null,
          rule: phrase`One a post; height above ground and depth of the hole make the length.`,
          source: phrase`company rule`,
          of: { posts: same.map(({ id }) => id), lines: [], gates: [] },
        },
      ];
    });
