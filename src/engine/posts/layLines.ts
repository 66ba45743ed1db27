import type { GateId, LineId, MarkId, ShotId } from '../../site/ids.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Shot } from '../../site/shot.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { GateLayout, Layout, LineLayout, Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import { groundOf, type Ground } from '../ground/groundOf.ts';
import { keepOutsOf } from '../keepOut/keepOutsOf.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { askedCourses } from './askedCourses.ts';
import { builtMarkPosts } from './builtPosts.ts';
import type { Chain } from './chain.ts';
import { gateStands } from './gateStands.ts';
import type { KnownGate } from './gateSlots.ts';
import { homeless } from './homeless.ts';
import { knownGates } from './knownGates.ts';
import { layRuns, type LaidRun } from './layRuns.ts';
import { markPostsOf, type MarkPost, type TurnedChain } from './markPosts.ts';
import { metRuns, type MetRun } from './metRuns.ts';
import { seatAsSet } from './seatAsSet.ts';
import type { SeatedCourse } from './seatLines.ts';
import { tagged } from './tagged.ts';
import { turnedChains } from './turnedChains.ts';
import type { Unfilled } from './unfilledOf.ts';
import { wallsOf } from './wallSetback.ts';

/** Lines, posts and gates of a site, and what the checks want to know besides. */
export interface LaidLines extends Pick<Layout, 'lines' | 'posts' | 'gates' | 'ground'> {
  readonly chains: readonly Chain[];
  readonly seated: readonly SeatedCourse[];
  /** Lines without line posts. */
  readonly unfilled: Unfilled;
  readonly keepOuts: readonly KeepOut[];
  /** The runs in the order in which posts are tagged. */
  readonly runs: readonly LaidRun[];
  /** The posts that each of these is the first to meet, before they have tags and with them. */
  readonly met: readonly MetRun[];
  readonly tagged: readonly (readonly Post[])[];
  /** The posts beside the fence that stand for gates. */
  readonly stands: readonly Post[];
}

const settledMarks = (turned: readonly TurnedChain[], carry: Carry): Map<MarkId, MarkPost> => {
  const settled = carry.shelf<MarkPost>('mark post');
  const found = markPostsOf(turned);
  for (const [mark, post] of found) found.set(mark, settled.settle(mark, post));
  return found;
};

const lineLayouts = (
  chains: readonly Chain[],
  runs: readonly Run[],
  carry: Carry,
): LaidLines['lines'] => {
  const known = carry.shelf<LineLayout>('line');
  const own = new Map<LineId, Run[]>(chains.map(({ id }) => [id, []]));
  for (const run of runs) own.get(run.line)?.push(run);
  return Object.fromEntries(
    chains.map(({ id, legs, length }) => {
      const built = own.get(id) ?? [];
      const work = () => ({ id, legs, runs: built, length });
      return [id, known.take(id, [legs, length, ...built], work)];
    }),
  );
};

/** The ground as its shots describe it; null for a site without any. */
const groundFor = ({ shots }: Site): Ground | null => {
  const known = (Object.entries(shots) as [ShotId, Shot][]).map(([id, shot]) => ({ ...shot, id }));
  return known.length === 0 ? null : groundOf(known);
};

const gatesInTurn = (
  gates: ReadonlyMap<GateId, KnownGate>,
  runs: readonly LaidRun[],
  chains: readonly Chain[],
  carry: Carry,
): { readonly placed: readonly GateLayout[]; readonly all: LaidLines['gates'] } => {
  const settled = carry.shelf<GateLayout>('gate without a leg');
  const found = new Map(runs.flatMap((run) => run.gates.map((gate) => [gate.id, gate] as const)));
  const all = [...gates.values()].map(
    (gate) => found.get(gate.id) ?? settled.settle(gate.id, homeless(gate, chains)),
  );
  return {
    placed: all.filter(({ id }) => found.has(id)),
    all: Object.fromEntries(all.map((gate) => [gate.id, gate])),
  };
};

/** The posts of all runs, and those that stand for gates beside them. */
const postsOf = (
  site: Site,
  onRuns: readonly (readonly Post[])[],
  gates: readonly GateLayout[],
  carry: Carry,
): { readonly posts: Layout['posts']; readonly stands: readonly Post[] } => {
  const settled = carry.shelf<Post>('post beside the fence');
  // key by key: of thousands of posts entries take three times as long
  const posts: Record<PostId, Post> = {};
  for (const own of onRuns) for (const post of own) posts[post.id] = post;
  const stands = gateStands(site, gates, posts).map((post) => settled.settle(post.id, post));
  for (const post of stands) posts[post.id] = post;
  return { posts, stands };
};

/**
 * Works out posts, runs and gates of every fence line of a site; what is made of the same as in the
 * layout before is taken over from that, the very same objects.
 */
export const layLines = (site: Site, carry: Carry): LaidLines => {
  const turned = turnedChains(site, carry);
  const chains = turned.map(({ chain }) => chain);
  const marks = settledMarks(turned, carry);
  const { courses, unfilled } = askedCourses(turned, carry);
  const walls = carry.shelf<readonly Segment<'site'>[]>('walls').settle('', wallsOf(site));
  const keepOuts = keepOutsOf(site, carry);
  const grounds = carry.shelf<Ground | null>('ground');
  const ground = grounds.take('', [site.shots], () => groundFor(site));
  const seating = seatAsSet({ courses, marks, walls, carry }, knownGates(site, carry));
  const { seated, burdens, gates } = seating;
  const markPosts = builtMarkPosts(marks, burdens, seated, carry);
  const bends = new Set(markPosts.flatMap((post) => (post.kind === 'bend' ? [post.id] : [])));
  const runs = layRuns(site, seated, { bends, keepOuts, ground }, carry);
  const met = metRuns(runs, markPosts, carry);
  const onRuns = tagged(met, carry);
  const { placed, all } = gatesInTurn(gates, runs, chains, carry);
  return {
    chains,
    seated,
    unfilled,
    keepOuts,
    ground,
    runs,
    met,
    tagged: onRuns,
    lines: lineLayouts(
      chains,
      runs.map(({ run }) => run),
      carry,
    ),
    ...postsOf(site, onRuns, placed, carry),
    gates: all,
  };
};
