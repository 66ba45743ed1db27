import { boundsOverlap, expandBounds } from '../../geometry/bounds.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Carry } from '../carry/carry.ts';
import type { Post } from '../post.ts';
import type { MetRun } from '../posts/metRuns.ts';
import { dugBy } from './dugBy.ts';
import { holesMissing } from './holesMissing.ts';
import { isWithin } from './isWithin.ts';

/** The posts of a run, where all their holes lie and the widest of these, inches. */
interface Dug extends ReturnType<typeof dugBy> {
  readonly key: string;
  readonly posts: readonly Post[];
}

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

/** Each run with those before it, by their western ends, whose holes lie within the same bounds. */
const neighboursOf = (dug: readonly Dug[]): (readonly [Dug, readonly Dug[]])[] => {
  let open: Dug[] = [];
  return dug
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

/** Of a run and those near to it, those with which its holes clash, itself reckoned in. */
const clashesOf = (one: Dug, near: readonly Dug[]): readonly string[] => {
  const others = near.filter((other) => runsMeet(one, other)).map(({ key }) => key);
  return others.length > 0 || anyMeet(one.posts, one.posts) ? [one.key, ...others] : [];
};

/**
 * The runs of which any hole meets that of another post, and the widest hole of all, inches. Of the
 * posts of any other run nothing needs to be looked at again.
 */
export const clashingRuns = (
  met: readonly MetRun[],
  carry: Carry,
): { readonly keys: ReadonlySet<string>; readonly widest: number } => {
  const shelf = carry.shelf<Dug>('holes of a run');
  const clashes = carry.shelf<readonly string[]>('runs with which a run clashes');
  const dug = met.map(({ key, all }) =>
    shelf.take(key, [all], () => ({ key, posts: all, ...dugBy(all) })),
  );
  const keys = new Set<string>();
  for (const [one, near] of neighboursOf(dug)) {
    const found = clashes.take(one.key, [one, ...near], () => clashesOf(one, near));
    for (const key of found) keys.add(key);
  }
  return { keys, widest: dug.reduce((most, { widest }) => Math.max(most, widest), 0) };
};
