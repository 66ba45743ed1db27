import { plateAnchors } from '../../trade/wallSets.ts';
import type { Carry } from '../carry/carry.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';
import { grouped } from './grouped.ts';
import type { LoadGroup } from './loadGroup.ts';

const onPlates = (posts: readonly Post[]): readonly Post[] =>
  posts.filter(({ wall, hole }) => wall !== null && hole.depth === 0);

/** Plates for posts that are bolted to a wall, by side and post, and anchors for them. */
export const countPlates = (groups: readonly LoadGroup[], carry: Carry): LoadLine[] => {
  const known = carry.shelf<readonly Post[]>('posts on plates');
  const plated = groups.flatMap(({ key, posts }) =>
    known.take(key, [posts], () => onPlates(posts)),
  );
  if (plated.length === 0) return [];
  const of = (some: readonly Post[]) => ({ posts: some.map(({ id }) => id), lines: [], gates: [] });
  const plates = grouped(plated, ({ hole, pipe }) => `${hole.diameter}|${pipe}`).flatMap(
    (same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      return [
        {
          item: `Base plate for ${first.pipe}`,
          count: same.length,
          unit: 'each',
          each: first.hole.diameter,
          rule: 'One a post that stands on a wall on a plate; each is its side.',
          source: first.hole.source,
          of: of(same),
        },
      ];
    },
  );
  const anchors: LoadLine = {
    item: 'Anchor for base plates',
    count: plated.length * plateAnchors.count,
    unit: 'each',
    each: null,
    rule: `${plateAnchors.count} a plate; size and length by their maker for the wall that is there.`,
    source: plateAnchors.source.text,
    of: of(plated),
  };
  return [...plates, anchors];
};
