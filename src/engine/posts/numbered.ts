import type { LineId } from '../../site/ids.ts';
import type { Space } from '../layout.ts';
import type { PostId } from '../post.ts';
import type { SeatedRow } from './withPulls.ts';

/**
 * The rows of runs with their bays numbered by stretch, along each line from 1: the next stretch
 * begins behind every terminal post. Line posts and bends are passed by.
 */
export const numbered = (
  rows: readonly SeatedRow[],
  bends: ReadonlySet<PostId>,
): readonly SeatedRow[] => {
  const next = new Map<LineId, number>();
  return rows.map(({ seated, row, under }) => {
    const line = seated.course.chain.id;
    const plain = new Set(row.own.flatMap(({ id, kind }) => (kind === 'line' ? [id] : [])));
    let stretch = next.get(line) ?? 1;
    const spaces = row.spaces.map((space, n): Space => {
      if (space.kind === 'gate') return space;
      const own = { ...space, stretch };
      const end = row.posts[n + 1]?.post ?? 'post:';
      if (!plain.has(end) && !bends.has(end)) stretch += 1;
      return own;
    });
    next.set(line, stretch);
    return { seated, under, row: { ...row, spaces } };
  });
};
