import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** A square post: its side and wall in inches, solid where the wall is half of the side. */
export interface SquarePost {
  readonly label: string;
  readonly od: Inches;
  readonly wall: Inches;
  readonly source: Source;
}

const lumber: Source = {
  text: phrase`dressed sizes of the American Softwood Lumber Standard PS 20; from memory`,
  status: 'memory',
};
const practice: Source = {
  text: phrase`common practice, no published source; measure the post that is there`,
  status: 'practice',
};

const rows = [
  ['4 × 4 lumber', 3.5, 1.75, lumber],
  ['6 × 6 lumber', 5.5, 2.75, lumber],
  ['2 square tube', 2, 0.065, practice],
  ['2-1/2 square tube', 2.5, 0.075, practice],
  ['3 square tube', 3, 0.083, practice],
  ['4 square tube', 4, 0.12, practice],
  ['4 square vinyl', 4, 0.15, practice],
  ['5 square vinyl', 5, 0.15, practice],
] as const;

/** Square posts for fence that is no chain link: a start, the actual size is what counts. */
export const squarePosts: readonly SquarePost[] = rows.map(([label, od, wall, source]) => ({
  label,
  od: inches(od),
  wall: inches(wall),
  source,
}));

/** What a document says of the square post of a label. RangeError for one that the table does not have. */
export const squarePost = (label: (typeof rows)[number][0]) => {
  const found = squarePosts.find((one) => one.label === label);
  if (found === undefined)
    throw new RangeError(`square posts: expected one of them, found ${label}`);
  const { od, wall } = found;
  return { label, od, wall, section: 'square' } as const;
};
