import type { Carry } from '../carry/carry.ts';
import type { LoadLine } from '../loadLine.ts';
import { holeVolume } from '../structure/holeVolume.ts';
import type { Post, PostId } from '../post.ts';
import type { LoadGroup } from './loadGroup.ts';

/** Concrete for one hole, cubic feet: the hole less the pipe in it. */
const netVolume = ({ od, hole }: Post): number => holeVolume(hole, od) / 1728;

/** What fills the holes of some posts, cubic feet. */
interface Filled {
  readonly volume: number;
  readonly posts: readonly PostId[];
}

const filledOf = (posts: readonly Post[]): Filled => ({
  volume: posts.reduce((total, post) => total + netVolume(post), 0),
  posts: posts.map(({ id }) => id),
});

interface Fill {
  readonly ground: Filled;
  readonly cores: Filled;
}

const fillOf = (posts: readonly Post[]): Fill => ({
  ground: filledOf(posts.filter(({ wall }) => wall === null)),
  cores: filledOf(posts.filter(({ wall, hole }) => wall !== null && hole.depth > 0)),
});

const told = (item: string, filled: readonly Filled[], rule: string): LoadLine[] => {
  // one by one: of thousands of posts flat lists take several times as long
  const posts: PostId[] = [];
  for (const each of filled) for (const id of each.posts) posts.push(id);
  if (posts.length === 0) return [];
  return [
    {
      item,
      count: filled.reduce((total, { volume }) => total + volume, 0),
      unit: 'cubic feet',
      each: null,
      rule,
      source: 'volume of a cylinder',
      of: { posts, lines: [], gates: [] },
    },
  ];
};

/**
 * Concrete for all holes in the ground together, and grout for all cores in walls, net of the posts;
 * none for no posts, nor for those on plates. Added up group by group.
 */
export const countConcrete = (groups: readonly LoadGroup[], carry: Carry): LoadLine[] => {
  const known = carry.shelf<Fill>('fill of holes');
  const fills = groups.map(({ key, posts }) => known.take(key, [posts], () => fillOf(posts)));
  return [
    ...told(
      'Concrete',
      fills.map(({ ground }) => ground),
      'Each hole, π/4 × diameter² × depth, less the post in it, added up.',
    ),
    ...told(
      'Grout for cores',
      fills.map(({ cores }) => cores),
      'Each core, π/4 × diameter² × depth, less the post in it, added up.',
    ),
  ];
};
