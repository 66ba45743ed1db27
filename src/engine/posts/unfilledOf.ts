import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { LineId } from '../../site/ids.ts';
import type { Course } from './course.ts';
import { longestBay } from './longestBay.ts';
import { holeFor } from './holeFor.ts';

/** Fence lines that are laid out without line posts, and why. */
export type Unfilled = ReadonlyMap<LineId, 'bay shorter than a hole' | 'too many posts'>;

/**
 * So many line posts are laid out on one site. Ours, no published source: ten times the largest
 * yard that one crew builds; more is a slip of the finger and would only stop the program.
 */
export const mostLinePosts = 50_000;

interface Asked {
  readonly course: Course;
  readonly spec: FenceSpec;
}

const shorterThanHole = (spec: FenceSpec, { wall }: Course): boolean => {
  const { linePost: post, fabricHeight } = spec;
  return longestBay(spec) < holeFor({ post, fabricHeight, leaf: null, wall }).diameter;
};

/**
 * Lines whose largest bay is shorter than the hole of a line post, and, where a site would take
 * more line posts than are laid out, the lines that take most of them.
 */
export const unfilledOf = (asked: readonly Asked[]): Unfilled => {
  const unfilled = new Map<LineId, 'bay shorter than a hole' | 'too many posts'>();
  const counts = new Map<LineId, number>();
  for (const { course, spec } of asked) {
    const { id } = course.chain;
    if (shorterThanHole(spec, course)) unfilled.set(id, 'bay shorter than a hole');
    else counts.set(id, (counts.get(id) ?? 0) + course.length / longestBay(spec));
  }
  let total = [...counts.values()].reduce((sum, count) => sum + count, 0);
  for (const [id, count] of [...counts].toSorted(([, a], [, b]) => b - a)) {
    if (total <= mostLinePosts) break;
    unfilled.set(id, 'too many posts');
    total -= count;
  }
  return unfilled;
};
