import type { Carry } from '../../engine/carry/carry.ts';
import type { GateLayout, Layout, LineLayout, Run } from '../../engine/layout.ts';
import type { Post, PostId } from '../../engine/post.ts';
import type { Touched } from '../../engine/posts/touchedPosts.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { LineId } from '../../site/ids.ts';
import type { Group } from '../group.ts';
import { ghostOf } from './drawFence.ts';
import {
  drawCalledOtherwise,
  drawRun,
  nearer,
  type DrawnBefore,
  type RunDrawing,
  type RunStyle,
} from './drawRun.ts';

/** A post at an end of runs: the line and the run that come to it first, and its nearest neighbour on any. */
export interface EndPost {
  readonly post: Post;
  readonly line: LineId;
  readonly drawn: RunDrawing;
  readonly next: SitePoint | null;
}

/** What is drawn of a fence line, its posts aside that other lines may come to first. */
export interface DrawnLine {
  readonly id: LineId;
  readonly runs: readonly { readonly run: Run; readonly drawn: RunDrawing }[];
  readonly fence: readonly Group[];
  readonly chains: readonly Group[];
  /** In the order in which its runs come to them. */
  readonly ends: readonly EndPost[];
  /** Those of them that other lines end at too. */
  readonly shared: readonly EndPost[];
}

/** A line to be drawn, and what of the posts is touched since it was drawn last; null where it was not. */
interface LineToDraw {
  readonly line: LineLayout;
  readonly layout: Layout;
  readonly how: RunStyle;
  readonly touched: Touched | null;
}

/** A run as it was drawn, and of what. */
interface KeptRun extends DrawnBefore {
  readonly run: Run;
  readonly how: RunStyle;
  readonly gates: readonly (GateLayout | undefined)[];
}

const gatesOf = (run: Run, layout: Layout): (GateLayout | undefined)[] =>
  run.spaces.flatMap((space) => (space.kind === 'gate' ? [layout.gates[space.gate]] : []));

/** Whether all but its posts is the very same of which a run was drawn. */
const isAsBuilt = (was: KeptRun, run: Run, { layout, how }: LineToDraw): boolean =>
  was.run === run &&
  was.how === how &&
  was.gates.every((gate) => gate === undefined || layout.gates[gate.id] === gate);

/** Whether a run was drawn of the very same: a look that makes nothing, since most runs are. */
const stands = (was: KeptRun, run: Run, what: LineToDraw): boolean => {
  if (what.touched === null || !isAsBuilt(was, run, what)) return false;
  for (const { post } of run.posts) if (what.touched.posts.has(post)) return false;
  return true;
};

/** Whether nothing that is drawn of two posts differs, but what they are called. */
const standAlike = (a: Post | undefined, b: Post | undefined): boolean =>
  a === b ||
  (a?.at === b?.at &&
    a?.kind === b?.kind &&
    a?.along === b?.along &&
    a?.od === b?.od &&
    a?.hole === b?.hole);

/** The posts of a run; most are as they were before, and looking for each by its id takes longer. */
const postsOf = (
  run: Run,
  before: KeptRun | undefined,
  { layout, touched }: LineToDraw,
): KeptRun['posts'] =>
  run.posts.map(({ post }, n) => {
    const was = before?.run === run && touched !== null ? before.posts[n] : undefined;
    if (was === undefined) return layout.posts.get(post);
    const now = touched?.posts.get(post);
    return now === undefined ? was : (now ?? undefined);
  });

const drawnRuns = (what: LineToDraw, carry: Carry): DrawnLine['runs'] => {
  const { line, layout, how } = what;
  const shelf = carry.shelf<KeptRun>('runs');
  return line.runs.map((run) => {
    const draw = (before: KeptRun | undefined): KeptRun => {
      const posts = postsOf(run, before, what);
      const all = { run, posts, layout, how };
      const called =
        before !== undefined &&
        isAsBuilt(before, run, what) &&
        posts.every((post, n) => standAlike(post, before.posts[n]));
      const drawn = called ? drawCalledOtherwise(all, before) : drawRun(all, before?.drawn);
      return { run, how, posts, gates: gatesOf(run, layout), drawn };
    };
    const { drawn } = shelf.renew(run.id, (was) => stands(was, run, what), draw);
    return { run, drawn };
  });
};

const endsOf = (line: LineId, runs: DrawnLine['runs'], { posts }: Layout): EndPost[] => {
  const ends = new Map<PostId, EndPost>();
  const meet = (id: PostId | undefined, drawn: RunDrawing, inward: SitePoint | null): void => {
    const post = id === undefined ? undefined : posts.get(id);
    if (post === undefined) return;
    const known = ends.get(post.id) ?? { post, line, drawn, next: null };
    ends.set(post.id, { ...known, next: nearer(known.next, inward) });
  };
  for (const { run, drawn } of runs) {
    meet(run.posts[0]?.post, drawn, drawn.inward.start);
    meet(run.posts.at(-1)?.post, drawn, drawn.inward.end);
  }
  return [...ends.values()];
};

/** Draws a fence line, of its runs those that are other than before (`carry`); one without runs as a ghost. */
export const drawLine = (what: LineToDraw, carry: Carry): DrawnLine => {
  const { line, layout } = what;
  const runs = drawnRuns(what, carry);
  const ends = endsOf(line.id, runs, layout);
  return {
    id: line.id,
    runs,
    fence: runs.length === 0 ? [ghostOf(line)] : runs.map(({ drawn }) => drawn.fence),
    chains: runs.map(({ drawn }) => drawn.chain),
    ends,
    shared: ends.filter(({ post }) => post.lines.length > 1),
  };
};
