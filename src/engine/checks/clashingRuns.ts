import { boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { distance } from '../../geometry/distance.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Carry } from '../carry/carry.ts';
import type { Post } from '../post.ts';
import type { MetRun } from '../posts/metRuns.ts';

/** How much more room two holes need, inches; nothing for two posts of one gate: its opening rules. */
export const holesMissing = (a: Post, b: Post): number =>
  a.gates.some((gate) => b.gates.includes(gate))
    ? 0
    : (a.hole.diameter + b.hole.diameter) / 2 - distance(a.at, b.at);

/** The posts of a run, where all their holes lie and the widest of these, inches. */
interface Dug {
  readonly key: string;
  readonly posts: readonly Post[];
  readonly bounds: Bounds;
  readonly widest: number;
}

/** Where the holes of some posts lie, and how wide the widest is. */
export const dugBy = (posts: readonly Post[]): Pick<Dug, 'bounds' | 'widest'> => {
  let [minX, minY, maxX, maxY, widest] = [Infinity, Infinity, -Infinity, -Infinity, 0];
  for (const { at, hole } of posts) {
    minX = Math.min(minX, at.x);
    minY = Math.min(minY, at.y);
    maxX = Math.max(maxX, at.x);
    maxY = Math.max(maxY, at.y);
    widest = Math.max(widest, hole.diameter);
  }
  return { bounds: expandBounds({ minX, minY, maxX, maxY }, widest / 2), widest };
};

/** Whether a post stands within bounds, the edges reckoned in. */
export const isWithin = ({ at: { x, y } }: Post, { minX, minY, maxX, maxY }: Bounds): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

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

/** The pairs of runs whose holes lie within the same bounds, each once and each with itself. */
const pairsOf = (dug: readonly Dug[]): (readonly [Dug, Dug])[] => {
  const pairs: (readonly [Dug, Dug])[] = [];
  let open: Dug[] = [];
  for (const one of dug.toSorted((a, b) => a.bounds.minX - b.bounds.minX)) {
    open = open.filter(({ bounds }) => bounds.maxX >= one.bounds.minX);
    open.push(one);
    for (const other of open) {
      if (boundsOverlap(one.bounds, other.bounds)) pairs.push([other, one]);
    }
  }
  return pairs;
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
  const meet = carry.shelf<boolean>('holes of two runs meet');
  const dug = met.map(({ key, all }) =>
    shelf.take(key, [all], () => ({ key, posts: all, ...dugBy(all) })),
  );
  const keys = new Set<string>();
  for (const [a, b] of pairsOf(dug)) {
    const [first, last] = a.key < b.key ? [a, b] : [b, a];
    const found = meet.take(`${first.key} ${last.key}`, [first, last], () =>
      a === b
        ? anyMeet(a.posts, a.posts)
        : anyMeet(
            a.posts.filter((post) => isWithin(post, expandBounds(b.bounds, a.widest))),
            b.posts.filter((post) => isWithin(post, expandBounds(a.bounds, b.widest))),
          ),
    );
    if (found) keys.add(a.key).add(b.key);
  }
  return { keys, widest: dug.reduce((most, { widest }) => Math.max(most, widest), 0) };
};
