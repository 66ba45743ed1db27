import type { Carry } from '../carry/carry.ts';
import type { Space } from '../layout.ts';
import type { PostId } from '../post.ts';
import type { SeatedRow } from './withPulls.ts';

/** A row with its bays numbered, and the number of the stretch that comes after it. */
interface Numbered {
  readonly each: SeatedRow;
  readonly next: number;
}

const numberedRow = (each: SeatedRow, bends: ReadonlySet<PostId>, first: number): Numbered => {
  const { row } = each;
  // all but the two at its ends are its own
  const stretched = new Set(row.own.flatMap(({ id, kind }) => (kind === 'line' ? [] : [id])));
  const last = row.spaces.length - 1;
  let next = first;
  const spaces = row.spaces.map((space, n): Space => {
    if (space.kind === 'gate') return space;
    const { kind, length } = space;
    const own = { kind, length, stretch: next };
    const end = row.posts[n + 1]?.post ?? 'post:';
    const ends = n === last || (stretched.size > 0 && stretched.has(end));
    if (ends && !bends.has(end)) next += 1;
    return own;
  });
  return { each: { ...each, row: { ...row, spaces } }, next };
};

/**
 * The rows of the runs of one line with their bays numbered by stretch from 1: the next stretch begins
 * behind every terminal post. Line posts and bends are passed by.
 */
export const numbered = (
  rows: readonly SeatedRow[],
  bends: ReadonlySet<PostId>,
  carry: Carry,
): readonly SeatedRow[] => {
  const known = carry.shelf<Numbered>('numbered row');
  let next = 1;
  return rows.map((each) => {
    const first = next;
    const end = each.row.posts.at(-1)?.post ?? 'post:';
    const from = [each, first, bends.has(end)];
    const work = () => numberedRow(each, bends, first);
    const found = known.take(each.seated.course.key, from, work);
    ({ next } = found);
    return found.each;
  });
};
