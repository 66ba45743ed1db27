import { inches } from '../units/inches.ts';
import { squarePost } from './squarePosts.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

const source: Source = {
  text: phrase`common practice, no published source; dressed sizes of lumber by the American Softwood Lumber Standard PS 20, from memory`,
  status: 'practice',
};

/** A fence of boards on rails as a company starts from: lengths in inches. */
export const boardFence = {
  board: { width: inches(5.5) },
  rail: { label: '2 × 4' },
  /** Above this height there are three rails, else two. */
  manyRailsFrom: inches(60),
  post: squarePost('4 × 4 lumber'),
  gatePost: squarePost('6 × 6 lumber'),
  maxBay: inches(96),
  source,
} as const;
