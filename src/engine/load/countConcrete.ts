import type { GateLayout } from '../layout.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';
import { holeVolume } from '../structure/holeVolume.ts';
import type { Site } from '../../site/site.ts';
import { phrase } from '../../phrases/phrase.ts';

const cubicFoot = 1728;

/** Concrete for one hole, cubic feet: the hole less the pipe in it. */
const netVolume = (post: Post): number => holeVolume(post.hole, post) / cubicFoot;

/** What some posts and gates take, cubic feet. */
const filled = (
  posts: readonly Post[],
  gates: readonly GateLayout[],
): Pick<LoadLine, 'count' | 'of'> => ({
  count:
    posts.reduce((total, post) => total + netVolume(post), 0) +
    gates.reduce(
      (total, { receiver }) =>
        total + (receiver === null ? 0 : holeVolume(receiver.hole, null) / cubicFoot),
      0,
    ),
  of: { posts: posts.map(({ id }) => id), lines: [], gates: gates.map(({ id }) => id) },
});

const told = (
  { item, code, rule }: Pick<LoadLine, 'item' | 'code' | 'rule'>,
  { count, of }: Pick<LoadLine, 'count' | 'of'>,
): LoadLine[] =>
  count === 0
    ? []
    : [
        {
          part: 'concrete',
          code,
          item,
          count,
          unit: 'cubic feet',
          each: null,
          sold: null,
          rule,
          source: phrase`volume of a cylinder`,
          of,
        },
      ];

/**
 * Concrete for all holes in the ground together, those of receivers that are set in it too, and grout for
 * all cores in walls, net of the posts; none for no posts, nor for those on plates.
 */
export const countConcrete = (
  posts: readonly Post[],
  gates: readonly GateLayout[],
  site: Pick<Site, 'gates'>,
): LoadLine[] => {
  const ground = posts.filter(({ wall }) => wall === null);
  const cores = posts.filter(({ wall, hole }) => wall !== null && hole.depth > 0);
  const set = gates.filter(({ id }) => site.gates[id]?.receiver?.kind === 'set in concrete');
  return [
    ...told(
      {
        item: phrase`Concrete`,
        code: 'concrete',
        rule: phrase`Each hole, π/4 × diameter² × depth, less the post in it, added up.`,
      },
      filled(ground, set),
    ),
    ...told(
      {
        item: phrase`Grout for cores`,
        code: 'grout',
        rule: phrase`Each core, π/4 × diameter² × depth, less the post in it, added up.`,
      },
      filled(cores, []),
    ),
  ];
};
