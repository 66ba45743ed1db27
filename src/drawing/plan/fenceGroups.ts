import { alike } from '../../engine/carry/alike.ts';
import type { Carry } from '../../engine/carry/carry.ts';
import type { GateLayout, Layout, LineLayout, Run } from '../../engine/layout.ts';
import { isTerminal, standsByGate, type Post, type PostId } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Primitive } from '../primitive.ts';
import { chainSide } from './chainSide.ts';
import { ghostOf } from './drawFence.ts';
import { drawPost } from './drawPost.ts';
import { drawPostWithTag, drawRun, nearer, type RunDrawing, type RunStyle } from './drawRun.ts';
import { drawStandTag } from './drawTag.ts';
import { infillOn } from './infillOn.ts';
import { yardMiddle } from './yardMiddle.ts';

/** From a fence to its chain, paper inches. */
const chainOff = 0.36;

type Group = readonly Primitive[];

/** All fence of a yard in groups: what hangs, the holes, what posts are called, the chains of dimensions. */
export interface FenceGroups {
  readonly fence: readonly Group[];
  readonly posts: readonly Group[];
  readonly tags: readonly Group[];
  readonly chains: readonly Group[];
}

interface Written {
  readonly lengths: LengthStyle;
  readonly tapes: 'printed' | undefined;
}

/** A post at an end of runs: the first of them, and its nearest neighbour on any. */
interface EndPost {
  readonly post: Post;
  readonly drawn: RunDrawing;
  next: SitePoint | null;
}

interface DrawnRun {
  readonly run: Run;
  readonly drawn: RunDrawing;
}

const values = <T>(map: Readonly<Record<string, T>>): T[] => Object.values(map);

const runStyle = (site: Site, line: LineLayout, side: 1 | -1, written: Written): RunStyle => ({
  of: infillOn(site, line.id),
  chain: side,
  hook: site.lines[line.id]?.hook ?? 'start',
  style: written.lengths,
  off: side * chainOff,
  tapes: written.tapes,
});

/** A run as it was drawn, and of what. */
interface KeptRun {
  readonly run: Run;
  readonly how: RunStyle;
  readonly posts: readonly (Post | undefined)[];
  readonly gates: readonly (GateLayout | undefined)[];
  readonly drawn: RunDrawing;
}

const gatesOf = (run: Run, layout: Layout): (GateLayout | undefined)[] =>
  run.spaces.flatMap((space) => (space.kind === 'gate' ? [layout.gates[space.gate]] : []));

const sameStyle = (a: RunStyle, b: RunStyle): boolean =>
  a.of === b.of &&
  a.chain === b.chain &&
  a.hook === b.hook &&
  a.style === b.style &&
  a.tapes === b.tapes;

/** Whether a run was drawn of the very same: a look that makes nothing, since most runs are. */
const stands = (kept: KeptRun, run: Run, layout: Layout, how: RunStyle): boolean => {
  if (kept.run !== run || !sameStyle(kept.how, how)) return false;
  for (let n = 0; n < kept.posts.length; n += 1)
    if (layout.posts.get(run.posts[n]?.post ?? 'post:') !== kept.posts[n]) return false;
  return kept.gates.every((gate) => gate === undefined || layout.gates[gate.id] === gate);
};

const drawnRun = (run: Run, layout: Layout, how: RunStyle, carry: Carry): RunDrawing => {
  const draw = (before: KeptRun | undefined): KeptRun => {
    const posts = run.posts.map(({ post }) => layout.posts.get(post));
    const drawn = drawRun({ run, posts, layout, how }, before?.drawn);
    return { run, how, posts, gates: gatesOf(run, layout), drawn };
  };
  return carry.shelf<KeptRun>('runs').renew(run.id, (kept) => stands(kept, run, layout, how), draw)
    .drawn;
};

/** The posts at the ends of runs, in the order in which the runs come to them. */
const endPosts = (runs: readonly DrawnRun[], layout: Layout): ReadonlyMap<PostId, EndPost> => {
  const ends = new Map<PostId, EndPost>();
  const meet = (id: PostId | undefined, drawn: RunDrawing, inward: SitePoint | null): void => {
    const post = id === undefined ? undefined : layout.posts.get(id);
    if (post === undefined) return;
    const known = ends.get(post.id);
    if (known === undefined) ends.set(post.id, { post, drawn, next: inward });
    else known.next = nearer(known.next, inward);
  };
  for (const { run, drawn } of runs) {
    meet(run.posts[0]?.post, drawn, drawn.inward.start);
    meet(run.posts.at(-1)?.post, drawn, drawn.inward.end);
  }
  return ends;
};

interface DrawnEnd {
  readonly terminal: boolean;
  readonly hole: Group;
  readonly tag: Group;
}

const drawnEnds = (runs: readonly DrawnRun[], layout: Layout, carry: Carry) => {
  const kept = carry.shelf<DrawnEnd>('end posts');
  const ends = new Map<PostId, DrawnEnd>();
  for (const [id, { post, drawn, next }] of endPosts(runs, layout)) {
    const draw = (before: DrawnEnd | undefined): DrawnEnd => {
      const { hole, tag } = drawPostWithTag(post, drawn.side(post), next);
      const now = { terminal: isTerminal(post), hole, tag: [tag] };
      return {
        ...now,
        hole: alike(before?.hole, now.hole) ? (before?.hole ?? now.hole) : now.hole,
        tag: alike(before?.tag, now.tag) ? (before?.tag ?? now.tag) : now.tag,
      };
    };
    ends.set(id, kept.next(id, [post, drawn, next?.x, next?.y], draw));
  }
  return ends;
};

/** Posts and tags run by run, each end with the run that comes to it first; terminals are called last. */
const alongRuns = (runs: readonly DrawnRun[], ends: ReadonlyMap<PostId, DrawnEnd>) => {
  const left = new Map(ends);
  const [posts, numbers, letters]: [Group[], Group[], Group[]] = [[], [], []];
  const end = (id: PostId | undefined): void => {
    const found = id === undefined ? undefined : left.get(id);
    if (id === undefined || found === undefined) return;
    left.delete(id);
    posts.push(found.hole);
    (found.terminal ? letters : numbers).push(found.tag);
  };
  for (const { run, drawn } of runs) {
    end(run.posts[0]?.post);
    posts.push(drawn.holes);
    numbers.push(drawn.numbers);
    letters.push(drawn.letters);
    end(run.posts.at(-1)?.post);
  }
  return { posts, tags: [...numbers, ...letters] };
};

/** Whether a gate has posts besides those of its opening. */
const hasStands = ({ id, slides, stop }: GateLayout, site: Site): boolean =>
  slides.length > 0 || stop !== null || site.gates[id]?.holdOpen === true;

/** Posts that stand beside the fence for a gate. */
const besides = (site: Site, layout: Layout, carry: Carry) => {
  // few yards have any, and all posts of a yard are many
  if (!values(layout.gates).some((gate) => hasStands(gate, site))) return { posts: [], tags: [] };
  const kept = carry.shelf<{ readonly hole: Group; readonly tag: Group }>('posts beside');
  const drawn = [...layout.posts.values()].filter(standsByGate).map((post) =>
    kept.take(post.id, [post], () => ({
      hole: drawPost(post, undefined),
      tag: [drawStandTag(post)],
    })),
  );
  return { posts: drawn.map(({ hole }) => hole), tags: drawn.map(({ tag }) => tag) };
};

/** Every fence line of a site: see `FenceGroups`; what is drawn of the same as before is the very same group. */
export const fenceGroups = (
  site: Site,
  layout: Layout,
  written: Written,
  carry: Carry,
): FenceGroups => {
  const lines = values(layout.lines);
  const middle = yardMiddle(lines, site);
  const sides = carry.shelf<1 | -1>('chain sides');
  const ghosts = carry.shelf<Group>('ghosts');
  const runsOf = (line: LineLayout): DrawnRun[] => {
    const side = sides.take(line.id, [line, middle?.x, middle?.y], () => chainSide(line, middle));
    const how = runStyle(site, line, side, written);
    return line.runs.map((run) => ({ run, drawn: drawnRun(run, layout, how, carry) }));
  };
  const drawn = lines.map((line) => ({ line, runs: runsOf(line) }));
  const runs = drawn.flatMap((one) => one.runs);
  const along = alongRuns(runs, drawnEnds(runs, layout, carry));
  const beside = besides(site, layout, carry);
  return {
    fence: drawn.flatMap(({ line, runs: own }) =>
      own.length === 0
        ? [ghosts.take(line.id, [line], () => ghostOf(line))]
        : own.map((one) => one.drawn.fence),
    ),
    posts: [...along.posts, ...beside.posts],
    tags: [...along.tags, ...beside.tags],
    chains: runs.map((one) => one.drawn.chain),
  };
};
