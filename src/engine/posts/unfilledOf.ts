import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { LineId } from '../../site/ids.ts';
import type { Course } from './course.ts';
import { longestBay } from './longestBay.ts';
import { holeFor } from './holeFor.ts';

/** Fence lines that are laid out without line posts, and why. */
export type Unfilled = ReadonlyMap<LineId, 'bay shorter than a hole' | 'too many posts'>;

/**
 * So many line posts are laid out on one site. Ours, no published source: twenty times the largest
 * yard that one crew builds; more is a slip of the finger and would only stop the program.
 */
export const mostLinePosts = 100_000;

interface Asked {
  readonly course: Course;
  readonly spec: FenceSpec;
}

const shorterThanHole = (spec: FenceSpec, { wall }: Course): boolean => {
  const { linePost: post, fabricHeight } = spec;
  return longestBay(spec) < holeFor({ post, fabricHeight, leaf: null, wall }).diameter;
};

/** How many line posts the courses of one line take, about, and whether any has bays shorter than a hole. */
export interface Filling {
  readonly id: LineId;
  readonly short: boolean;
  /** Null where no course counts. */
  readonly count: number | null;
}

/** What fills the courses of one line. */
export const fillingOf = (id: LineId, asked: readonly Asked[]): Filling => {
  let [short, count]: [boolean, number | null] = [false, null];
  for (const { course, spec } of asked) {
    if (shorterThanHole(spec, course)) short = true;
    else count = (count ?? 0) + course.length / longestBay(spec);
  }
  return { id, short, count };
};

/**
 * Lines whose largest bay is shorter than the hole of a line post, and, where a site would take
 * more line posts than are laid out, the lines that take most of them.
 */
export const unfilledOf = (lines: readonly Filling[]): Unfilled => {
  const unfilled = new Map<LineId, 'bay shorter than a hole' | 'too many posts'>();
  const counts = new Map<LineId, number>();
  for (const { id, short, count } of lines) {
    if (short) unfilled.set(id, 'bay shorter than a hole');
    if (count !== null) counts.set(id, count);
  }
  let total = [...counts.values()].reduce((sum, count) => sum + count, 0);
  if (total <= mostLinePosts) return unfilled;
  for (const [id, count] of [...counts].toSorted(([, a], [, b]) => b - a)) {
    if (total <= mostLinePosts) break;
    unfilled.set(id, 'too many posts');
    total -= count;
  }
  return unfilled;
};
