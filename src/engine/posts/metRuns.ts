import type { LineId } from '../../site/ids.ts';
import type { Carry } from '../carry/carry.ts';
import type { Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import type { LineMarkPosts } from './builtPosts.ts';
import type { LaidRun, LineRuns } from './layRuns.ts';
import { raised, risesOn, type Rises } from './raised.ts';

/** The posts that a run is the first to meet, in their order along it; not yet tagged. */
export interface MetRun {
  readonly key: string;
  readonly posts: readonly Post[];
  /** All that it has, those at its ends too that another run met before. */
  readonly all: readonly Post[];
}

/** What a run meets, and its own posts as high as its rises ask for. */
interface Met {
  readonly built: readonly Post[];
  readonly rises: Rises;
  readonly own: readonly Post[];
  readonly met: MetRun;
}

/** The posts that the runs of one line are the first to meet. */
export interface LineMet {
  readonly id: LineId;
  readonly met: readonly MetRun[];
}

/** The run's own posts, as high as its fabric asks for. */
const raisedOwn = (own: readonly Post[], rises: Rises): readonly Post[] =>
  rises.size === 0 ? own : own.map((post) => raised(post, rises.get(post.id) ?? 0));

/** Whether a run's own posts are all that stand between its two ends, in their order already. */
const areInTurn = ({ posts }: Run, own: readonly Post[]): boolean =>
  own.length === posts.length - 2 && own.every(({ id }, n) => id === posts[n + 1]?.post);

/** All posts of a run in their order along it. */
const inTurn = (run: Run, own: readonly Post[], ends: readonly Post[]): readonly Post[] => {
  const [first, last] = ends;
  if (first !== undefined && last !== undefined && first !== last && areInTurn(run, own)) {
    return [first, ...own, last];
  }
  const known = new Map<PostId, Post>();
  for (const post of own) known.set(post.id, post);
  for (const post of ends) known.set(post.id, post);
  const all: Post[] = [];
  for (const { post: id } of run.posts) {
    const post = known.get(id);
    if (post === undefined) continue;
    all.push(post);
    // a loop ends at the post that it begins at
    known.delete(id);
  }
  return all;
};

/** The most that any of some runs asks of each post, inches; nothing for those on the level. */
const mostOf = (risen: readonly Rises[]): Rises => {
  const most = new Map<PostId, number>();
  for (const rises of risen) {
    for (const [id, rise] of rises) most.set(id, Math.max(most.get(id) ?? 0, rise));
  }
  return most;
};

/** The posts at which lines meet, as high as any of these asks for. */
const raisedShared = (
  shared: ReadonlyMap<PostId, Post>,
  risen: readonly LineRises[],
  carry: Carry,
): ReadonlyMap<PostId, Post> => {
  const shelf = carry.shelf<Post>('raised post where lines meet');
  return new Map(
    [...shared].map(([id, post]) => {
      const rise = risen.reduce((most, line) => Math.max(most, line.most.get(id) ?? 0), 0);
      return [id, shelf.take(id, [post, rise], () => raised(post, rise))] as const;
    }),
  );
};

/** What the runs of one line ask of posts. */
interface LineRises {
  readonly risen: readonly Rises[];
  readonly most: Rises;
}

const none: Rises = new Map();

/** No run asks for more than on the level. */
const level: LineRises = { risen: [], most: none };

const risesOf = (runs: readonly LaidRun[], carry: Carry): LineRises => {
  const shelf = carry.shelf<Rises>('rises of a run');
  const risen = runs.map(({ key, run, seated: { spec } }) =>
    run.ground === null
      ? none
      : shelf.take(key, [run, spec], () => risesOn(run, spec.fabricHeight)),
  );
  return { risen, most: mostOf(risen) };
};

/** What one line meets: its runs and their rises, the posts at its marks, and those that another line met before. */
interface Meeting {
  readonly runs: readonly LaidRun[];
  readonly rises: LineRises;
  readonly own: readonly Post[];
  readonly shared: ReadonlyMap<PostId, Post>;
  readonly before: ReadonlySet<PostId>;
}

const metOf = (
  { runs, rises: { risen, most }, own: marks, shared, before: seenBefore }: Meeting,
  carry: Carry,
): readonly MetRun[] => {
  const raisedMarks = carry.shelf<Post>('raised post at a mark');
  const shelf = carry.shelf<Met>('posts that a run meets');
  const atMarks = new Map(marks.map((post) => [post.id, post]));
  const seen = new Set<PostId>(seenBefore);
  const atMark = (id: PostId): Post | undefined => {
    const post = atMarks.get(id);
    if (post === undefined) return shared.get(id);
    const rise = most.get(id) ?? 0;
    return rise === 0 ? post : raisedMarks.take(id, [post, rise], () => raised(post, rise));
  };
  const endsOf = ({ posts }: Run): readonly Post[] => {
    const ends: Post[] = [];
    for (const stop of [posts[0], posts.at(-1)]) {
      const post = stop && atMark(stop.post);
      if (post !== undefined) ends.push(post);
    }
    return ends;
  };
  const all = runs.map(({ key, run, own: built }, n) => {
    const rises = risen[n] ?? none;
    const ends = endsOf(run);
    const met = ends.map(({ id }) => seen.has(id));
    for (const { id } of ends) seen.add(id);
    const from = [run, built, rises, ...ends, ...met];
    return shelf.next(key, from, (before) => {
      const own =
        before?.built === built && before.rises === rises ? before.own : raisedOwn(built, rises);
      const posts = inTurn(run, own, ends);
      const isNew = (post: Post): boolean => met[ends.indexOf(post)] !== true;
      return { built, rises, own, met: { key, all: posts, posts: posts.filter(isNew) } };
    }).met;
  });
  return carry.shelf<readonly MetRun[]>('met runs').list('', all);
};

/**
 * The posts of all runs as high as their fabric asks for, each with the first run that meets it, line by
 * line. A mark's post is the same from run to run.
 */
export const metRuns = (
  lines: readonly LineRuns[],
  at: { readonly lines: readonly LineMarkPosts[]; readonly shared: ReadonlyMap<PostId, Post> },
  carry: Carry,
): readonly LineMet[] => {
  const shelf = carry.shelf<LineRises>('rises of a line');
  const risen = lines.map(({ id, runs }) => shelf.part(id, [runs], (own) => risesOf(runs, own)));
  const shared = raisedShared(at.shared, risen, carry);
  const met = carry.shelf<LineMet>('posts that a line meets');
  const seen = new Set<PostId>();
  return lines.map(({ id: line, runs }, n) => {
    const marks = at.lines[n];
    const [rises, own] = [risen[n] ?? level, marks?.own ?? []];
    const before = new Set<PostId>();
    const from: unknown[] = [runs, rises, own];
    for (const id of marks?.shared ?? []) {
      from.push(shared.get(id), seen.has(id));
      if (seen.has(id)) before.add(id);
      seen.add(id);
    }
    const meeting = { runs, rises, own, shared, before };
    return met.part(line, from, (carried) => ({ id: line, met: metOf(meeting, carried) }));
  });
};
