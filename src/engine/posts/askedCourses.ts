import type { FenceSpec } from '../../site/fenceSpec.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import { coursesOf, type Course } from './course.ts';
import type { TurnedChain } from './markPosts.ts';
import { specOn } from './specOn.ts';
import { unfilledOf, type Unfilled } from './unfilledOf.ts';

/** A course and what it is built to. */
export interface AskedCourse {
  readonly course: Course;
  readonly spec: FenceSpec;
}

/** All that lays out a course, of which the rest of its chain is no part. */
const madeOf = ({ chain, legs, from, to, length, bow, wall }: Course): unknown[] => {
  const made: unknown[] = [chain.id, chain.line.hook, length, bow, wall];
  for (const { vertex, mark, at } of [from, to]) made.push(vertex, mark, at.x, at.y);
  for (const leg of legs) {
    const { id, start, end } = leg;
    made.push(id, start.x, start.y, end.x, end.y, leg.bow, leg.length, chain.line.stepped[id]);
  }
  return made;
};

/**
 * The courses of all chains with their specs, and the lines that are laid out without line posts. A
 * course that is made of the same as before is the very same, whatever became of the rest of its
 * chain: nothing that is laid out on it may look at more of that than its id.
 */
export const askedCourses = (
  turned: readonly TurnedChain[],
  carry: Carry,
): { readonly courses: readonly AskedCourse[]; readonly unfilled: Unfilled } => {
  const cut = carry.shelf<readonly Course[]>('courses of a chain');
  const settled = carry.shelf<Course>('course');
  const specs = carry.shelf<FenceSpec>('spec of a course');
  const empty = carry.shelf<FenceSpec>('spec without line posts');
  const asked = turned.flatMap((each) => {
    const { chain, turnings, spec } = each;
    return cut
      .take(chain.id, [each], () => coursesOf(chain, turnings))
      .map((found) => {
        const key = found.key;
        const course = settled.take(key, madeOf(found), () => found);
        return { course, spec: specs.take(key, [course, spec], () => specOn(course, spec)) };
      });
  });
  const unfilled = unfilledOf(asked);
  const courses = asked.map(({ course, spec }) => {
    if (!unfilled.has(course.chain.id)) return { course, spec };
    const bare = () => ({ ...spec, maxBay: inches(Infinity) });
    return { course, spec: empty.take(course.key, [spec], bare) };
  });
  return { courses, unfilled };
};
