import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** The farthest between posts that fabric is pulled from, as somebody asks for it. */
export interface PullInterval {
  readonly length: Inches;
  readonly source: Source;
}

/** The change of grade, rise over run, above which somebody asks for a pull post. */
export interface PullGrade {
  readonly ratio: number;
  readonly source: Source;
}

const interval = (length: number, text: string): PullInterval => ({
  length: inches(length),
  source: { text, status: 'published' },
});

/** Used for a new fence unless its spec says otherwise. */
export const defaultPullInterval = interval(
  12 * 500,
  'W. McElroy, Fences & Retaining Walls, Craftsman: chain link',
);

/** What is published, from often to seldom. */
export const pullIntervals: readonly PullInterval[] = [
  interval(69_000 / 25.4, phrase`UK practice (BS 1722 class): straining post every 69 m`),
  defaultPullInterval,
  interval(
    12 * 1000,
    phrase`Caltrans Standard Specifications 80-3.03: 1,000 ft unless fabric is machine-stretched`,
  ),
];

/**
 * Used for a new fence unless its spec says otherwise. The sheet asks for it where the ground rises
 * or falls more than 15 in 100; here it is the change of grade at one place.
 */
export const defaultPullGrade: PullGrade = {
  ratio: 0.15,
  source: {
    text: phrase`Chain Link Fencing: Detailed Instructions (Scribd 154728461): 15 per 100 ft`,
    status: 'published',
  },
};

/** What is published; ASTM F567-07 4.2 says only "abrupt". */
export const pullGrades: readonly PullGrade[] = [
  defaultPullGrade,
  {
    ratio: Math.tan(Math.PI / 6),
    source: {
      text: phrase`Iowa DOT Standard Specifications 2519: angle post at 30 degrees or more`,
      status: 'published',
    },
  },
];
