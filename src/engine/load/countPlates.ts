import { plateAnchors } from '../../trade/wallSets.ts';
import type { LoadLine } from '../loadLine.ts';
import type { Post } from '../post.ts';
import { grouped } from './grouped.ts';
import { phrase } from '../../phrases/phrase.ts';

const onPosts = (posts: readonly Post[]): LoadLine['of'] => ({
  posts: posts.map(({ id }) => id),
  lines: [],
  gates: [],
});

/** Plates for posts that are bolted to a wall, by side and post, and anchors for them. */
export const countPlates = (posts: readonly Post[]): LoadLine[] => {
  const plated = posts.filter(({ wall, hole }) => wall !== null && hole.depth === 0);
  if (plated.length === 0) return [];
  const plates = grouped(plated, ({ hole, pipe }) => `${hole.diameter}|${pipe}`).flatMap(
    (same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      return [
        {
          part: 'posts',
          code: `base-plate ${first.hole.diameter}in ${first.od}`,
          item: phrase`Base plate for ${first.pipe}`,
          count: same.length,
          unit: 'each',
          each: first.hole.diameter,
          sold: null,
          rule: phrase`One a post that stands on a wall on a plate; each is its side.`,
          source: first.hole.source,
          of: onPosts(same),
        },
      ];
    },
  );
  const anchors: LoadLine = {
    part: 'posts',
    code: 'plate-anchor',
    item: phrase`Anchor for base plates`,
    count: plated.length * plateAnchors.count,
    unit: 'each',
    each: null,
    sold: null,
    rule: phrase`${plateAnchors.count} a plate; size and length by their maker for the wall that is there.`,
    source: plateAnchors.source.text,
    of: onPosts(plated),
  };
  return [...plates, anchors];
};
