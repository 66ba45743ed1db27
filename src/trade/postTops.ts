import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/** How far posts stand above the nominal top of the fabric, inches; negative is below it. */
export interface PostTops {
  readonly terminal: Inches;
  readonly line: Inches;
  readonly source: Source;
}

/** Used unless a fence spec says otherwise. The line post takes the top rail in its loop cap. */
export const defaultPostTops: PostTops = {
  terminal: inches(2),
  line: inches(-2),
  source: {
    text: 'W. McElroy, Fences & Retaining Walls, Craftsman: chain link',
    status: 'published',
  },
};

/** The other way it is done: a 10 ft court with posts of 10 ft 1 in and 9 ft 9 in. */
export const courtPostTops: PostTops = {
  terminal: inches(1),
  line: inches(-3),
  source: { text: phrase`common practice, no published source`, status: 'practice' },
};
