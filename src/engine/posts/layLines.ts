import type { GateId, MarkId, ShotId } from '../../site/ids.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Shot } from '../../site/shot.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { GateLayout, Layout, LineLayout } from '../layout.ts';
import type { Post } from '../post.ts';
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
import { layRuns, type LaidRun, type LineRuns } from './layRuns.ts';
import { askedPosts, markPostsOf, type MarkPost, type TurnedChain } from './markPosts.ts';
import { metRuns, type LineMet, type MetRun } from './metRuns.ts';
import { seatAsSet } from './seatAsSet.ts';
import type { SeatedCourse } from './seatLines.ts';
import { sharedPosts, type SharedPosts } from './sharedPosts.ts';
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
  /** The same line by line. */
  readonly meets: readonly LineMet[];
  readonly tagged: readonly (readonly Post[])[];
  /** The posts beside the fence that stand for gates. */
  readonly stands: readonly Post[];
}

/** The posts of all marks; those at which lines meet are put together from what each of these asks for. */
const settledMarks = (
  turned: readonly TurnedChain[],
  carry: Carry,
): ReadonlyMap<MarkId, MarkPost> => {
  const asked = carry.shelf<readonly MarkPost[]>('asked posts');
  const settled = carry.shelf<readonly MarkPost[]>('settled posts at marks');
  const lines = turned.map((each) => {
    const { chain, spec, turnings } = each;
    const marks = chain.stops.map(({ mark }) => mark);
    const found = asked.take(chain.id, [spec, turnings, ...marks], () => askedPosts(each));
    return settled.settle(chain.id, found);
  });
  return carry.shelf<ReadonlyMap<MarkId, MarkPost>>('mark posts').part('', lines, (own) => {
    const all = markPostsOf(lines);
    const shelf = own.shelf<MarkPost>('mark post');
    for (const [mark, post] of all) {
      if (post.lines.length > 1) all.set(mark, shelf.settle(mark, post));
    }
    return all;
  });
};

const lineLayouts = (
  chains: readonly Chain[],
  lines: readonly LineRuns[],
  carry: Carry,
): LaidLines['lines'] => {
  const known = carry.shelf<LineLayout>('line');
  return Object.fromEntries(
    chains.map(({ id, legs, length }, n) => {
      const built = lines[n]?.runs ?? [];
      const work = () => ({ id, legs, runs: built.map(({ run }) => run), length });
      return [id, known.take(id, [legs, length, built], work)];
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
  lines: readonly LineRuns[],
  chains: readonly Chain[],
  carry: Carry,
): { readonly placed: readonly GateLayout[]; readonly all: LaidLines['gates'] } => {
  const settled = carry.shelf<GateLayout>('gate without a leg');
  const onLine = carry.shelf<readonly GateLayout[]>('gates of a line');
  const own = lines.flatMap(({ id, runs }) =>
    onLine.take(id, [runs], () => runs.flatMap((run) => run.gates)),
  );
  const found = new Map(own.map((gate) => [gate.id, gate] as const));
  const all = [...gates.values()].map(
    (gate) => found.get(gate.id) ?? settled.settle(gate.id, homeless(gate, chains)),
  );
  return {
    placed: all.filter(({ id }) => found.has(id)),
    all: Object.fromEntries(all.map((gate) => [gate.id, gate])),
  };
};

/** The posts of all runs, and those that stand for gates beside them; the very same map where all of them are. */
const postsOf = (
  site: Site,
  onRuns: readonly (readonly Post[])[],
  gates: readonly GateLayout[],
  carry: Carry,
): { readonly posts: Layout['posts']; readonly stands: readonly Post[] } => {
  const settled = carry.shelf<Post>('post beside the fence');
  const known = carry.shelf<SharedPosts>('posts by their ids');
  const along = known.next('on runs', [onRuns], (before) => sharedPosts(onRuns, before));
  const stands = gateStands(site, gates, along).map((post) => settled.settle(post.id, post));
  if (stands.length === 0) return { posts: along, stands };
  const all = known.take('all', [along, ...stands], () => sharedPosts([...onRuns, stands], along));
  return { posts: all, stands };
};

/** Some lists as one: the very same one where all of them are. */
const joined = <T>(kind: string, lists: readonly (readonly T[])[], carry: Carry): readonly T[] =>
  // of hundreds of lists `flat` takes 80 times as long
  carry.shelf<readonly T[]>(kind).take('', lists, () => new Array<T>().concat(...lists));

const groundUnder = (site: Site, carry: Carry) => ({
  walls: carry.shelf<readonly Segment<'site'>[]>('walls').settle('', wallsOf(site)),
  keepOuts: carry.shelf<readonly KeepOut[]>('keep-outs').list('', keepOutsOf(site, carry)),
  ground: carry.shelf<Ground | null>('ground').take('', [site.shots], () => groundFor(site)),
});

/**
 * Works out posts, runs and gates of every fence line of a site; what is made of the same as in the
 * layout before is taken over from that, the very same objects.
 */
export const layLines = (site: Site, carry: Carry): LaidLines => {
  const turned = turnedChains(site, carry);
  const chains = joined(
    'chains',
    turned.map(({ chain }) => [chain]),
    carry,
  );
  const marks = settledMarks(turned, carry);
  const { lines: asked, unfilled } = askedCourses(turned, carry);
  const { walls, keepOuts, ground } = groundUnder(site, carry);
  const seating = seatAsSet({ lines: asked, marks, walls, carry }, knownGates(site, carry));
  const { seated, burdens, gates } = seating;
  const posts = builtMarkPosts(seated, { marks, burdens }, carry);
  const laid = layRuns(site, seated, { posts: posts.lines, keepOuts, ground }, carry);
  const met = metRuns(laid, posts, carry);
  const onRuns = joined('tagged', tagged(met, carry), carry);
  const { placed, all } = gatesInTurn(gates, laid, chains, carry);
  const [seats, runs, meets] = [
    seated.map((line) => line.seated),
    laid.map((line) => line.runs),
    met.map((line) => line.met),
  ];
  return {
    chains,
    seated: joined('seated', seats, carry),
    unfilled,
    keepOuts,
    ground,
    runs: joined('runs', runs, carry),
    met: joined('met', meets, carry),
    meets: met,
    tagged: onRuns,
    lines: lineLayouts(chains, laid, carry),
    ...postsOf(site, onRuns, placed, carry),
    gates: all,
  };
};
