import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';

/** Concrete for one hole, cubic feet: the hole less the pipe in it. */
const netVolume = ({ od, hole }: Post): number =>
  ((Math.PI / 4) * (hole.diameter ** 2 - od ** 2) * hole.depth) / 1728;

/** Concrete for all holes together, net of the posts; none for no posts. */
export const countConcrete = (posts: readonly Post[]): LoadLine[] => {
  if (posts.length === 0) return [];
  return [
    {
      item: 'Concrete',
      count: posts.reduce((total, post) => total + netVolume(post), 0),
      unit: 'cubic feet',
      each: null,
      rule: 'Each hole, π/4 × diameter² × depth, less the post in it, added up.',
      source: 'volume of a cylinder',
      of: { posts: posts.map(({ id }) => id), lines: [], gates: [] },
    },
  ];
};
