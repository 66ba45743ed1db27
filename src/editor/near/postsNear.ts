import type { Layout, LineLayout } from '../../engine/layout.ts';
import type { PostId } from '../../engine/post.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { boundsIndex, foundIn, wholeOf, type BoundsIndex } from '../../geometry/boundsIndex.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { remembered } from './remembered.ts';
import { squareAbout, type About } from './squareAbout.ts';

/** A post of a run, and the shorter of the spaces beside it, inches. */
export interface PostPlace {
  readonly id: PostId;
  /** Undefined of one that the layout does not have. */
  readonly at: SitePoint | undefined;
  readonly bay: number;
}

type Posts = Layout['posts'];

const placesOf = ({ runs }: LineLayout, posts: Posts): PostPlace[] =>
  runs.flatMap(({ posts: row, spaces }) =>
    row.map(({ post: id }, n): PostPlace => {
      const bay = Math.min(spaces[n - 1]?.length ?? Infinity, spaces[n]?.length ?? Infinity);
      return { id, at: posts[id]?.at, bay };
    }),
  );

const known = new WeakMap<LineLayout, BoundsIndex<PostPlace>>();

/** The posts of a line; the index of a layout before, where the line is the same and none of its posts has moved. */
const indexOf = (line: LineLayout, posts: Posts): BoundsIndex<PostPlace> => {
  const before = known.get(line);
  const stands = ({ id, at }: PostPlace): boolean => posts[id]?.at === at;
  if (before?.items.every(stands)) return before;
  const made = boundsIndex(placesOf(line, posts), ({ at }) =>
    boundsOf(at === undefined ? [] : [at]),
  );
  known.set(line, made);
  return made;
};

const linesOf = remembered(({ lines, posts }: Layout) =>
  boundsIndex(
    Object.values<LineLayout>(lines).map((line) => indexOf(line, posts)),
    wholeOf,
  ),
);

/** The posts of runs about a place, line by line: all within reach, and some beyond. */
export const postsNear = (layout: Layout, about: About): PostPlace[] => {
  const square = squareAbout(about);
  return foundIn(linesOf(layout), square).flatMap((line) => foundIn(line, square));
};
