import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';

/** Concrete for one hole, cubic feet: the hole less the pipe in it. */
const netVolume = ({ od, hole }: Post): number =>
  ((Math.PI / 4) * (hole.diameter ** 2 - od ** 2) * hole.depth) / 1728;

const filled = (item: string, posts: readonly Post[], rule: string): LoadLine[] =>
  posts.length === 0
    ? []
    : [
        {
          item,
          count: posts.reduce((total, post) => total + netVolume(post), 0),
          unit: 'cubic feet',
          each: null,
          rule,
          source: 'volume of a cylinder',
          of: { posts: posts.map(({ id }) => id), lines: [], gates: [] },
        },
      ];

/**
 * Concrete for all holes in the ground together, and grout for all cores in walls, net of the posts;
 * none for no posts, nor for those on plates.
 */
export const countConcrete = (posts: readonly Post[]): LoadLine[] => [
  ...filled(
    'Concrete',
    posts.filter(({ wall }) => wall === null),
    'Each hole, π/4 × diameter² × depth, less the post in it, added up.',
  ),
  ...filled(
    'Grout for cores',
    posts.filter(({ wall, hole }) => wall !== null && hole.depth > 0),
    'Each core, π/4 × diameter² × depth, less the post in it, added up.',
  ),
];
