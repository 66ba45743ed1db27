import type { Carry } from '../carry/carry.ts';
import type { Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import type { LaidRun } from './layRuns.ts';
import { raised, risesOn, type Rises } from './raised.ts';

/** The posts that a run is the first to meet, in their order along it; not yet tagged. */
export interface MetRun {
  readonly key: string;
  readonly posts: readonly Post[];
  /** All that it has, those at its ends too that another run met before. */
  readonly all: readonly Post[];
}

/** The run's own posts, as high as its fabric asks for. */
const raisedOwn = (own: readonly Post[], rises: Rises): readonly Post[] =>
  rises.size === 0 ? own : own.map((post) => raised(post, rises.get(post.id) ?? 0));

/** All posts of a run in their order along it. */
const inTurn = (run: Run, own: readonly Post[], ends: readonly Post[]): readonly Post[] => {
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

/** The most that any run asks of each post at a mark, inches; nothing for those on the level. */
const risesAtMarks = (risen: readonly Rises[], marks: ReadonlyMap<PostId, Post>): Rises => {
  const most = new Map<PostId, number>();
  for (const rises of risen) {
    for (const [id, rise] of rises) {
      if (marks.has(id)) most.set(id, Math.max(most.get(id) ?? 0, rise));
    }
  }
  return most;
};

/**
 * The posts of all runs as high as their fabric asks for, each with the first run that meets it.
 * A mark's post is the same from run to run.
 */
export const metRuns = (
  runs: readonly LaidRun[],
  markPosts: readonly Post[],
  carry: Carry,
): readonly MetRun[] => {
  const shelves = {
    rises: carry.shelf<Rises>('rises of a run'),
    own: carry.shelf<readonly Post[]>('raised posts of a run'),
    mark: carry.shelf<Post>('raised post at a mark'),
    all: carry.shelf<readonly Post[]>('all posts of a run'),
    met: carry.shelf<MetRun>('posts that a run meets'),
  };
  const risen = runs.map(({ key, run, seated: { spec } }) =>
    shelves.rises.take(key, [run, spec], () => risesOn(run, spec.fabricHeight)),
  );
  const level = new Map(markPosts.map((post) => [post.id, post]));
  const most = risesAtMarks(risen, level);
  const seen = new Set<PostId>();
  const endsOf = (run: Run): readonly Post[] =>
    [run.posts[0], run.posts.at(-1)].flatMap((stop) => {
      const post = stop === undefined ? undefined : level.get(stop.post);
      if (post === undefined) return [];
      const rise = most.get(post.id) ?? 0;
      return [shelves.mark.take(post.id, [post, rise], () => raised(post, rise))];
    });
  return runs.map(({ key, run, own: built }, n) => {
    const rises = risen[n] ?? new Map();
    const own = shelves.own.take(key, [built, rises], () => raisedOwn(built, rises));
    const ends = endsOf(run);
    const met = ends.map(({ id }) => seen.has(id));
    const all = shelves.all.take(key, [run, own, ...ends], () => inTurn(run, own, ends));
    const before = new Set(ends.flatMap(({ id }, end) => (met[end] === true ? [id] : [])));
    for (const { id } of ends) seen.add(id);
    return shelves.met.take(key, [all, ...met], () => ({
      key,
      all,
      posts: all.filter(({ id }) => !before.has(id)),
    }));
  });
};
