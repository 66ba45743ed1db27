import { alike } from '../../engine/carry/alike.ts';
import type { Layout, Run } from '../../engine/layout.ts';
import { isTerminal, type Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Infill } from '../../site/infill.ts';
import type { Beside, Primitive } from '../primitive.ts';
import { drawChain, type ChainStyle } from './drawChain.ts';
import { drawFence } from './drawFence.ts';
import { drawPost } from './drawPost.ts';
import { drawTag } from './drawTag.ts';
import { kept } from './kept.ts';

/** How the runs of a fence line are drawn. */
export interface RunStyle extends ChainStyle {
  readonly of: Infill['kind'];
  /** The side of the line that its chains stand on. */
  readonly chain: 1 | -1;
}

/** A run, the posts of it in their order, and how it is drawn. */
export interface RunToDraw {
  readonly run: Run;
  readonly posts: readonly (Post | undefined)[];
  readonly layout: Layout;
  readonly how: RunStyle;
}

/** What is drawn of a run: the posts at its ends are drawn with the runs that they part. */
export interface RunDrawing {
  readonly fence: readonly Primitive[];
  readonly chain: readonly Primitive[];
  /** Holes of the posts between its ends. */
  readonly holes: readonly Primitive[];
  /** Numbers of the line posts between its ends, and letters of the terminals there. */
  readonly numbers: readonly Primitive[];
  readonly letters: readonly Primitive[];
  /** The side of a post that is left free for what it is called; one for all of a straight run. */
  readonly side: (post: Post) => Beside;
  readonly row: Beside | null;
  /** From the posts at its start and at its end to the next on it, inches; none where a post is missing. */
  readonly inward: { readonly start: SitePoint | null; readonly end: SitePoint | null };
}

const wayTo = (from: Post | undefined, to: Post | undefined): SitePoint | null =>
  from === undefined || to === undefined
    ? null
    : { x: to.at.x - from.at.x, y: to.at.y - from.at.y };

const reach = (way: SitePoint): number => Math.hypot(way.x, way.y);

/** The shorter of two ways, the first of two that are as long. */
export const nearer = (a: SitePoint | null, b: SitePoint | null): SitePoint | null => {
  if (a === null || b === null) return a ?? b;
  return reach(b) < reach(a) ? b : a;
};

/** How much room the widest hole of line posts takes beside their run, inches. */
const takenBeside = (posts: readonly (Post | undefined)[]): number =>
  posts.reduce(
    (most, post) =>
      post === undefined || isTerminal(post) ? most : Math.max(most, post.hole.diameter / 2),
    0,
  );

/**
 * The sides that the posts of a run are numbered on, clear of its holes: that which the chain of its
 * line leaves free, one for all so that they stand in a row; outside of a curve, for each its own.
 */
const freeSides = (
  run: Run,
  posts: readonly (Post | undefined)[],
  chain: 1 | -1,
  known: Beside | null,
): Pick<RunDrawing, 'side' | 'row'> => {
  const taken = takenBeside(posts);
  const on = (side: number, way: number): Beside => ({
    way: { x: side * Math.sin(way), y: -side * Math.cos(way) },
    taken,
  });
  if (run.bow !== 0) return { side: ({ along }) => on(-Math.sign(run.bow), along), row: null };
  const now = on(chain, run.bearing);
  const row = alike(known, now) && known !== null ? known : now;
  return { side: () => row, row };
};

/** Calls `draw` for every post between the ends of a run, with the way to the nearer of its neighbours. */
const between = <Drawn>(
  posts: RunToDraw['posts'],
  draw: (post: Post, next: SitePoint | undefined) => Drawn,
): Drawn[] =>
  posts.slice(1, -1).flatMap((post, n) => {
    if (post === undefined) return [];
    const next = nearer(wayTo(post, posts[n]), wayTo(post, posts[n + 2]));
    return [draw(post, next ?? undefined)];
  });

/** What the posts between the ends of a run are called. */
const tagsOf = (
  posts: RunToDraw['posts'],
  side: RunDrawing['side'],
  before: RunDrawing | undefined,
): Pick<RunDrawing, 'numbers' | 'letters'> => {
  const tags = between(posts, (post, next) => ({ post, tag: drawTag(post, side(post), next) }));
  const [numbers, letters]: [Primitive[], Primitive[]] = [[], []];
  for (const { post, tag } of tags) (isTerminal(post) ? letters : numbers).push(tag);
  return { numbers: kept(before?.numbers, numbers), letters: kept(before?.letters, letters) };
};

/**
 * A run with its posts, in their order (undefined for one that the layout does not have). Parts that are as they
 * were `before` are the very same lists.
 */
export const drawRun = (
  { run, posts, layout, how }: RunToDraw,
  before: RunDrawing | undefined,
): RunDrawing => {
  const { side, row } = freeSides(run, posts, how.chain, before?.row ?? null);
  return {
    fence: kept(before?.fence, drawFence(run, layout, how.of)),
    chain: kept(before?.chain, drawChain(run, layout, how)),
    holes: kept(before?.holes, between(posts, drawPost).flat()),
    ...tagsOf(posts, side, before),
    side,
    row,
    inward: { start: wayTo(posts[0], posts[1]), end: wayTo(posts.at(-1), posts.at(-2)) },
  };
};

/** A run as it was drawn, and its posts then. */
export interface DrawnBefore {
  readonly posts: RunToDraw['posts'];
  readonly drawn: RunDrawing;
}

/** The same run where nothing but what its posts are called differs from what was drawn `before`. */
export const drawCalledOtherwise = (
  { run, posts, layout, how }: RunToDraw,
  before: DrawnBefore,
): RunDrawing => {
  const { drawn } = before;
  // a chain says only what the ends of its run are called
  const named = [0, -1].every((n) => posts.at(n)?.tag === before.posts.at(n)?.tag);
  return {
    ...drawn,
    chain: named ? drawn.chain : kept(drawn.chain, drawChain(run, layout, how)),
    ...tagsOf(posts, drawn.side, drawn),
  };
};
