import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { LineId, MarkId } from '../../site/ids.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import { coursesOf, type Course } from './course.ts';
import type { TurnedChain } from './markPosts.ts';
import { specOn } from './specOn.ts';
import { fillingOf, unfilledOf, type Filling, type Unfilled } from './unfilledOf.ts';

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

/** The courses of one line with what they are built to. */
export interface LineCourses {
  readonly id: LineId;
  readonly courses: readonly AskedCourse[];
  /** The marks at their ends. */
  readonly ends: ReadonlySet<MarkId>;
}

interface Asking extends LineCourses {
  readonly filling: Filling;
}

const endsOf = (courses: readonly AskedCourse[]): ReadonlySet<MarkId> =>
  new Set(courses.flatMap(({ course: { from, to } }) => [from.mark, to.mark]));

const askingOf = ({ chain, turnings, spec }: TurnedChain, carry: Carry): Asking => {
  const settled = carry.shelf<Course>('course');
  const specs = carry.shelf<FenceSpec>('spec of a course');
  const asked = carry.shelf<AskedCourse>('asked course');
  const found = coursesOf(chain, turnings).map((cut) => {
    const { key } = cut;
    const course = settled.take(key, madeOf(cut), () => cut);
    const own = specs.take(key, [course, spec], () => specOn(course, spec));
    return asked.take(key, [course, own], () => ({ course, spec: own }));
  });
  const courses = carry.shelf<readonly AskedCourse[]>('asked courses').list('', found);
  const { id } = chain;
  return { id, courses, ends: endsOf(courses), filling: fillingOf(id, courses) };
};

/** The courses of a line that is laid out without line posts. */
const unfilledIn = ({ id, courses, ends }: Asking, carry: Carry): LineCourses => {
  const empty = carry.shelf<FenceSpec>('spec without line posts');
  const bare = carry.shelf<AskedCourse>('course without line posts');
  const all = courses.map(({ course, spec }) => {
    const { key } = course;
    const own = empty.take(key, [spec], () => ({ ...spec, maxBay: inches(Infinity) }));
    return bare.take(key, [course, own], () => ({ course, spec: own }));
  });
  return { id, courses: all, ends };
};

/**
 * The courses of all chains with their specs, line by line, and the lines that are laid out without line
 * posts. A course that is made of the same as before is the very same, whatever became of the rest of its
 * chain: nothing that is laid out on it may look at more of that than its id.
 */
export const askedCourses = (
  turned: readonly TurnedChain[],
  carry: Carry,
): { readonly lines: readonly LineCourses[]; readonly unfilled: Unfilled } => {
  const lines = carry.shelf<Asking>('courses of a line');
  const bare = carry.shelf<LineCourses>('courses without line posts');
  const asked = turned.map((each) =>
    lines.part(each.chain.id, [each], (own) => askingOf(each, own)),
  );
  const unfilled = unfilledOf(asked.map(({ filling }) => filling));
  const all = asked.map((each) =>
    unfilled.has(each.id) ? bare.part(each.id, [each], (own) => unfilledIn(each, own)) : each,
  );
  return { lines: all, unfilled };
};
