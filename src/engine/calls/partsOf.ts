import type { CallPart } from './calls.ts';
import type { Destination } from './destination.ts';

/** What tells where a lot begins and ends, in the order of the text. */
export type Told =
  | { readonly kind: 'start'; readonly word: 'beginning' | 'commencing' }
  | { readonly kind: 'course'; readonly beginning: Destination['beginning'] };

interface Marked {
  readonly beginning: Destination['beginning'];
  /** The words that start something between the course before and this one. */
  readonly starts: readonly ('beginning' | 'commencing')[];
}

const markedOf = (told: readonly Told[]): readonly Marked[] => {
  let starts: ('beginning' | 'commencing')[] = [];
  return told.flatMap((one) => {
    if (one.kind === 'start') {
      starts.push(one.word);
      return [];
    }
    const marked = { beginning: one.beginning, starts };
    starts = [];
    return [marked];
  });
};

/** The number of the first course of the lot: the first of all but where the calls come to it by ties. */
const firstOf = (courses: readonly Marked[]): number => {
  const there = courses.flatMap(({ beginning }, n) => (beginning === 'no' ? [] : [n]));
  const [reached = -1] = there;
  const anew = courses.findIndex(({ starts }, n) => n > 0 && starts.includes('beginning'));
  if (anew > 0 && (reached < 0 || anew <= reached + 1)) return anew;
  if (reached < 0 || reached === courses.length - 1) return 0;
  const commenced = courses[0]?.starts.includes('commencing') === true;
  const twice = courses[reached]?.beginning === 'true beginning' && there.length > 1;
  return commenced || twice ? reached + 1 : 0;
};

/**
 * To what each course belongs. Calls that commence elsewhere come to the point of beginning by ties; the
 * lot goes from there to where the point of beginning is told again; what comes after is of another.
 */
export const partsOf = (told: readonly Told[]): readonly CallPart[] => {
  const courses = markedOf(told);
  const first = firstOf(courses);
  const last = courses.findIndex(({ beginning }, n) => n >= first && beginning !== 'no');
  return courses.map((_, n) => {
    if (n < first) return 'tie';
    return last < 0 || n <= last ? 'lot' : 'after';
  });
};
