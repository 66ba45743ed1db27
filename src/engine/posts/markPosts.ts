import type { LineId, MarkId } from '../../site/ids.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { PostId } from '../post.ts';
import type { Chain } from './chain.ts';
import type { Turning } from './turnings.ts';

/** A post that stands at a mark, put together from every fence line that passes the mark. */
export interface MarkPost {
  readonly id: PostId;
  readonly mark: MarkId;
  readonly kind: Exclude<Turning, 'straight'>;
  readonly lines: readonly LineId[];
  readonly pipe: PostPipe;
  readonly fabricHeight: Inches;
  /** How deep the build wants its hole at least, inches. */
  readonly leastDepth: Inches;
  readonly above: Inches;
}

const squareness = ({ section }: PostPipe): number => (section === 'square' ? 1 : 0);

/**
 * The larger of two posts: by outside diameter or side, then a square one, then by wall, then by label so
 * that order decides nothing.
 */
export const larger = (a: PostPipe, b: PostPipe): PostPipe => {
  const more =
    b.od - a.od || squareness(b) - squareness(a) || b.wall - a.wall || (b.label < a.label ? 1 : 0);
  return more > 0 ? b : a;
};

const most = (a: Inches, b: Inches): Inches => inches(Math.max(a, b));

const merged = (a: MarkPost, b: MarkPost): MarkPost => ({
  ...a,
  lines: [...new Set([...a.lines, ...b.lines])].toSorted(),
  pipe: larger(a.pipe, b.pipe),
  fabricHeight: most(a.fabricHeight, b.fabricHeight),
  leastDepth: most(a.leastDepth, b.leastDepth),
  above: most(a.above, b.above),
});

/** The post that a spec asks for at a mark. A bend gets a line post, all else a terminal post. */
const asked = (chain: Chain, spec: FenceSpec, mark: MarkId, kind: MarkPost['kind']): MarkPost => {
  const bend = kind === 'bend';
  return {
    id: `post:${mark}`,
    mark,
    kind,
    lines: [chain.id],
    pipe: bend ? spec.linePost : spec.terminalPost,
    fabricHeight: spec.fabricHeight,
    leastDepth: spec.leastDepth,
    above: inches(spec.fabricHeight + (bend ? spec.lineAbove : spec.terminalAbove)),
  };
};

/** A chain with its spec and what stands at each of its stops. */
export interface TurnedChain {
  readonly chain: Chain;
  readonly spec: FenceSpec;
  readonly turnings: readonly Turning[];
}

/** The posts that one line asks for at its marks, in the order in which it passes them. */
export const askedPosts = ({ chain, spec, turnings }: TurnedChain): readonly MarkPost[] =>
  chain.stops.flatMap(({ mark }, n) => {
    const kind = turnings[n];
    return kind === undefined || kind === 'straight' ? [] : [asked(chain, spec, mark, kind)];
  });

/**
 * The posts at the marks of all lines: one a mark however many lines meet there, with the largest
 * diameter, fabric height and height above ground that any of them asks for.
 */
export const markPostsOf = (lines: readonly (readonly MarkPost[])[]): Map<MarkId, MarkPost> => {
  const posts = new Map<MarkId, MarkPost>();
  for (const own of lines) {
    for (const post of own) {
      const known = posts.get(post.mark);
      posts.set(post.mark, known === undefined ? post : merged(known, post));
    }
  }
  return posts;
};
