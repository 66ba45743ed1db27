import { slack } from '../../geometry/tolerance.ts';
import type { Carry } from '../carry/carry.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { reachInto } from '../keepOut/reachInto.ts';
import type { PostId } from '../post.ts';
import { digs } from '../wall/digs.ts';
import { pointAt } from './course.ts';
import { holeFor } from './holeFor.ts';
import { pullsAmong } from './pullsAmong.ts';
import type { CourseGround } from './groundUnder.ts';
import type { RunPost, RunRow } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';

/** A run with its row of posts. */
export interface SeatedRow {
  readonly seated: SeatedCourse;
  readonly row: RunRow;
  /** Null where nothing is known of the ground. */
  readonly under: CourseGround | null;
  /** The keep-outs near enough for the holes of its line and pull posts. */
  readonly near: readonly KeepOut[];
}

/** A stretch that may go on over bends, and the line posts in it that could be pull posts. */
interface Reach {
  length: number;
  readonly places: { readonly at: number; readonly id: PostId }[];
}

/** Whether the larger hole of a pull post would be clear where a line post stands. */
const roomFor = ({ course, spec }: SeatedCourse, keepOuts: readonly KeepOut[]) => {
  const { terminalPost, fabricHeight } = spec;
  const hole = holeFor({
    post: terminalPost,
    fabricHeight,
    leaf: null,
    wall: course.wall,
  }).diameter;
  const closing = digs(course.wall) ? keepOuts : [];
  return ({ station }: RunPost): boolean => {
    const at = pointAt(course, station);
    return closing.every((keepOut) => reachInto(keepOut, at, hole / 2) <= slack);
  };
};

/** The stretches of one line, over bends, with the places for pull posts in them. */
const reachesOf = (rows: readonly SeatedRow[], bends: ReadonlySet<PostId>): Reach[] => {
  let open: Reach = { length: 0, places: [] };
  const reaches = [open];
  for (const { seated, row, near } of rows) {
    const lines = new Map(
      row.own.flatMap((post) => (post.kind === 'line' ? [[post.id, post] as const] : [])),
    );
    const fits = roomFor(seated, near);
    row.posts.forEach(({ post: id }, n) => {
      const space = row.spaces[n - 1];
      if (space?.kind === 'bay') open.length += space.length;
      const line = lines.get(id);
      if (line !== undefined) {
        if (fits(line)) open.places.push({ at: open.length, id });
        return;
      }
      if (space?.kind !== 'gate' && bends.has(id) && row.spaces[n]?.kind !== 'gate') return;
      open = { length: 0, places: [] };
      reaches.push(open);
    });
  }
  return reaches;
};

/** The line posts of one line that are pull posts. */
const chosenOn = (
  rows: readonly SeatedRow[],
  bends: ReadonlySet<PostId>,
  interval: number,
): ReadonlySet<PostId> =>
  new Set(
    reachesOf(rows, bends).flatMap(({ length, places }) => {
      const at = new Set(pullsAmong({ length, places: places.map((place) => place.at) }, interval));
      return places.flatMap((place) => (at.has(place.at) ? [place.id] : []));
    }),
  );

const withChosen = (each: SeatedRow, chosen: ReadonlySet<PostId>): SeatedRow => ({
  ...each,
  row: {
    ...each.row,
    own: each.row.own.map((post) =>
      chosen.has(post.id)
        ? { ...post, kind: 'pull' as const, pipe: each.seated.spec.terminalPost }
        : post,
    ),
  },
});

/**
 * The rows of the runs of one line, in which line posts are pull posts where a stretch is longer than fabric
 * is stretched at once (its spec's interval). A bend goes on with the stretch before it.
 */
export const withPulls = (
  rows: readonly SeatedRow[],
  bends: ReadonlySet<PostId>,
  carry: Carry,
): readonly SeatedRow[] => {
  const [first] = rows;
  const interval = first?.seated.spec.pullInterval ?? null;
  if (first === undefined || interval === null) return rows;
  const lines = carry.shelf<ReadonlySet<PostId>>('pull posts of a line');
  const changed = carry.shelf<SeatedRow>('row with pull posts');
  const ends = rows.flatMap(({ seated: { course } }) =>
    [course.from, course.to].map(({ mark }) => bends.has(`post:${mark}`)),
  );
  const work = () => chosenOn(rows, bends, interval);
  const chosen = lines.take(first.seated.course.chain.id, [interval, ...rows, ...ends], work);
  if (chosen.size === 0) return rows;
  return rows.map((each) => {
    const own = each.row.own.flatMap(({ id }) => (chosen.has(id) ? [id] : []));
    if (own.length === 0) return each;
    const key = each.seated.course.key;
    return changed.take(key, [each, ...own], () => withChosen(each, chosen));
  });
};
