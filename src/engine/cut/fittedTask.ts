import type { CutTask } from './cutTask.ts';

/**
 * A task as its solvers take it: only pieces that fit, and the kerf in lengths and room, since a stick that
 * is cut into n pieces without a rest loses n − 1 kerfs: n (l + k) ≤ L + k.
 */
export interface FittedTask {
  /** The place of each piece in the task. */
  readonly of: readonly number[];
  readonly lengths: readonly number[];
  readonly counts: readonly number[];
  readonly room: number;
  readonly offcuts: readonly {
    readonly stick: number;
    readonly room: number;
    readonly has: number;
  }[];
}

/** The pieces of a task that fit on a stick as it is bought, and the places of those that do not. */
export const fittedTask = ({
  pieces,
  stick,
  offcuts,
  kerf,
}: CutTask): { readonly fitted: FittedTask; readonly tooLong: readonly number[] } => {
  const places = pieces.map((_, n) => n);
  const fits = (n: number): boolean => (pieces[n]?.length ?? 0) <= stick;
  const of = places.filter(fits);
  return {
    fitted: {
      of,
      lengths: of.map((n) => (pieces[n]?.length ?? 0) + kerf),
      counts: of.map((n) => pieces[n]?.count ?? 0),
      room: stick + kerf,
      offcuts: offcuts
        .toSorted((a, b) => a.length - b.length)
        .map(({ length, count }) => ({ stick: length, room: length + kerf, has: count })),
    },
    tooLong: places.filter((n) => !fits(n)),
  };
};
