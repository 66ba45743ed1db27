import { boundsOverlap, expandBounds, unionOfBounds, type Bounds } from '../../geometry/bounds.ts';
import { distance } from '../../geometry/distance.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { LineId } from '../../site/ids.ts';
import type { Carry } from '../carry/carry.ts';
import type { Post } from '../post.ts';
import type { LineMet } from '../posts/metRuns.ts';
import { dugBy } from './dugBy.ts';
import { holesMissing } from './holesMissing.ts';
import { isWithin } from './isWithin.ts';

/** The posts of a run, where all their holes lie and the widest of these, inches. */
interface Dug extends ReturnType<typeof dugBy> {
  readonly key: string;
  readonly posts: readonly Post[];
  /** Whether any two of these holes meet. */
  readonly clash: boolean;
}

/**
 * Whether posts in a row stand so far apart along it that no two of their holes can meet: each at least
 * the widest hole from the one before, as seen from the first to the last.
 */
const standApart = (posts: readonly Post[], widest: number): boolean => {
  const [first, last] = [posts[0]?.at, posts.at(-1)?.at];
  if (first === undefined || last === undefined) return true;
  const long = distance(first, last);
  const [x, y] = [(last.x - first.x) / long, (last.y - first.y) / long];
  let before = -Infinity;
  for (const { at } of posts) {
    const along = at.x * x + at.y * y;
    // a loop has no way from its first to its last: what is no number is not apart
    if (!(along - before >= widest)) return false;
    before = along;
  }
  return true;
};

/** Whether any two holes meet of the posts of two lists; a post and itself are one. */
const anyMeet = (a: readonly Post[], b: readonly Post[]): boolean => {
  const side = Math.max(1, ...[a, b].map((posts) => dugBy(posts).widest));
  const squares = new Map<number, Post[]>();
  const place = (post: Post) =>
    [Math.floor(post.at.x / side), Math.floor(post.at.y / side)] as const;
  for (const post of a) {
    const [column, row] = place(post);
    const key = column * 2 ** 23 + row;
    const own = squares.get(key);
    if (own === undefined) squares.set(key, [post]);
    else own.push(post);
  }
  return b.some((post) => {
    const [column, row] = place(post);
    return [-1, 0, 1].some((across) =>
      [-1, 0, 1].some((up) =>
        (squares.get((column + across) * 2 ** 23 + row + up) ?? []).some(
          (other) => other.id !== post.id && holesMissing(other, post) > slack,
        ),
      ),
    );
  });
};

const dugOn = (key: string, posts: readonly Post[]): Dug => {
  const dug = dugBy(posts);
  const clash = !standApart(posts, dug.widest) && anyMeet(posts, posts);
  return { key, posts, ...dug, clash };
};

/** Things with bounds, each with those before it, by their western ends, whose bounds it shares ground with. */
const neighboursOf = <T extends { readonly bounds: Bounds }>(
  all: readonly T[],
): (readonly [T, readonly T[]])[] => {
  let open: T[] = [];
  return all
    .toSorted((a, b) => a.bounds.minX - b.bounds.minX)
    .map((one) => {
      open = open.filter(({ bounds }) => bounds.maxX >= one.bounds.minX);
      const near = open.filter(({ bounds }) => boundsOverlap(one.bounds, bounds));
      open.push(one);
      return [one, near];
    });
};

/** Whether any hole of one run meets one of another. */
const runsMeet = (a: Dug, b: Dug): boolean =>
  anyMeet(
    a.posts.filter((post) => isWithin(post, expandBounds(b.bounds, a.widest))),
    b.posts.filter((post) => isWithin(post, expandBounds(a.bounds, b.widest))),
  );

/** Of a run and some near to it, those with which its holes clash, itself reckoned in. */
const clashesWith = (one: Dug, near: readonly Dug[]): readonly string[] => {
  const others = near.filter((other) => runsMeet(one, other)).map(({ key }) => key);
  return others.length > 0 ? [one.key, ...others] : [];
};

/** The runs of one line, where all their holes lie, the widest of these, and the runs that clash in it. */
interface LineDug {
  readonly id: LineId;
  readonly runs: readonly Dug[];
  readonly bounds: Bounds;
  readonly widest: number;
  readonly keys: readonly string[];
}

const lineDug = ({ id, met }: LineMet, carry: Carry): LineDug => {
  const shelf = carry.shelf<Dug>('holes of a run');
  const clashes = carry.shelf<readonly string[]>('runs with which a run clashes');
  const runs = met.map(({ key, all }) => shelf.take(key, [all], () => dugOn(key, all)));
  const keys: string[] = [];
  for (const [one, near] of neighboursOf(runs)) {
    if (one.clash) keys.push(one.key);
    const found = clashes.take(one.key, [one, ...near], () => clashesWith(one, near));
    for (const key of found) keys.push(key);
  }
  const nowhere = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  const bounds = runs.reduce<Bounds>((all, run) => unionOfBounds(all, run.bounds), nowhere);
  const widest = runs.reduce((most, run) => Math.max(most, run.widest), 0);
  return { id, runs, bounds, widest, keys };
};

/** The runs of a line and of one near to it that clash with each other. */
const between = (a: LineDug, b: LineDug): readonly string[] =>
  a.runs.flatMap((one) =>
    boundsOverlap(one.bounds, b.bounds)
      ? clashesWith(
          one,
          b.runs.filter(({ bounds }) => boundsOverlap(one.bounds, bounds)),
        )
      : [],
  );

/**
 * The runs of which any hole meets that of another post, and the widest hole of all, inches. Of the
 * posts of any other run nothing needs to be looked at again.
 */
export const clashingRuns = (
  meets: readonly LineMet[],
  carry: Carry,
): { readonly keys: ReadonlySet<string>; readonly widest: number } => {
  const shelf = carry.shelf<LineDug>('holes of a line');
  const clashes = carry.shelf<readonly string[]>('runs of two lines that clash');
  const dug = meets.map((line) => shelf.part(line.id, [line.met], (own) => lineDug(line, own)));
  const keys = new Set<string>(dug.flatMap((line) => line.keys));
  for (const [one, near] of neighboursOf(dug)) {
    for (const other of near) {
      const id = `${one.id} ${other.id}`;
      const found = clashes.take(id, [one, other], () => between(one, other));
      for (const key of found) keys.add(key);
    }
  }
  return { keys, widest: dug.reduce((most, { widest }) => Math.max(most, widest), 0) };
};
