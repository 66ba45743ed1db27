import type { Run } from '../../engine/layout.ts';
import { lengthOf, type TapePiece } from './tapePiece.ts';

/** A row of a sheet as a tape sees it: inches of tape that fit, and what a fold takes of them. */
export interface TapeRow {
  readonly capacity: number;
  readonly fold: number;
}

/** A run in parts of at most `capacity` inches where posts allow, as even as can be. */
const partsOf = (run: Run, hook: 'start' | 'end', capacity: number): TapePiece[] => {
  const lastPost = run.posts.length - 1;
  const count = Math.max(1, Math.ceil(run.length / capacity - 1e-9));
  const parts: TapePiece[] = [];
  let first = 0;
  for (let n = 1; n <= count && first < lastPost; n++) {
    const until = (run.length * n) / count;
    const beyond = run.posts.findIndex(({ station }, at) => at > first && station > until + 1e-6);
    const last = n === count || beyond < 0 ? lastPost : Math.max(first + 1, beyond - 1);
    parts.push({ run, hook, first, last });
    first = last;
  }
  return parts.length === 0 ? [{ run, hook, first: 0, last: Math.max(0, lastPost) }] : parts;
};

/**
 * Runs one after the other in rows of a sheet. A run goes on in the row of the one before where it
 * fits there; a run longer than a row is parted at posts.
 */
export const packPieces = (
  runs: readonly Run[],
  hook: 'start' | 'end',
  { capacity, fold }: TapeRow,
): TapePiece[][] => {
  const rows: TapePiece[][] = [];
  let used = Infinity;
  for (const run of runs) {
    for (const part of partsOf(run, hook, capacity)) {
      const own = lengthOf(part);
      const row = rows.at(-1);
      if (row !== undefined && used + fold + own <= capacity) {
        row.push(part);
        used += fold + own;
      } else {
        rows.push([part]);
        used = own;
      }
    }
  }
  return rows;
};
