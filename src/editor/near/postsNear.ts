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

/** The posts of a line, those of each run together. */
const placesOf = ({ runs }: LineLayout, posts: Posts): PostPlace[][] =>
  runs.map(({ posts: row, spaces }) =>
    row.map(({ post: id }, n): PostPlace => {
      const bay = Math.min(spaces[n - 1]?.length ?? Infinity, spaces[n]?.length ?? Infinity);
      return { id, at: posts.get(id)?.at, bay };
    }),
  );

/** The posts of a line, and among them those at the ends of its runs. */
interface LinePosts {
  readonly index: BoundsIndex<PostPlace>;
  readonly ends: readonly PostPlace[];
}

const known = new WeakMap<LineLayout, LinePosts>();

/**
 * The posts of a line, as they were found in a layout before where the line is the very same: the posts of a
 * run are its own and follow from it, those at its ends are settled with other lines and are looked at again.
 */
const indexOf = (line: LineLayout, posts: Posts): BoundsIndex<PostPlace> => {
  const before = known.get(line);
  if (before?.ends.every(({ id, at }) => posts.get(id)?.at === at)) return before.index;
  const rows = placesOf(line, posts);
  const index = boundsIndex(rows.flat(), ({ at }) => boundsOf(at === undefined ? [] : [at]));
  const ends = rows.flatMap((row) => [row[0] ?? [], row.at(-1) ?? []].flat());
  known.set(line, { index, ends });
  return index;
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
