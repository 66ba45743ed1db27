import type { MarkId } from './ids.ts';
import type { Mark } from './mark.ts';
import type { Site } from './site.ts';

const sameMarks = (a: Site['marks'], b: Site['marks']): boolean => {
  if (a === b) return true;
  const marks = Object.entries(a) as [MarkId, Mark][];
  return marks.length === Object.keys(b).length && marks.every(([id, mark]) => b[id] === mark);
};

/** What of a site nothing is laid out by. */
const besides: readonly (keyof Site)[] = ['underlays', 'pictures', 'alternatives'];

/**
 * Whether two sites share all that is laid out, drawn and printed: they differ at most in the pictures
 * under the drawing and in their alternatives. By identity: parts that say the same but are not the same count as different.
 */
export const drawnAlike = (a: Site, b: Site): boolean =>
  (Object.keys(a) as (keyof Site)[]).every((part) => {
    if (besides.includes(part)) return true;
    return part === 'marks' ? sameMarks(a.marks, b.marks) : a[part] === b[part];
  });
