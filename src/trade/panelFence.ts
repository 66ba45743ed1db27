import { inches } from '../units/inches.ts';
import { squarePost } from './squarePosts.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

const source: Source = { text: phrase`common practice, no published source`, status: 'practice' };

/** A fence of panels as a company starts from: lengths in inches. */
export const panelFence = {
  /** Between the faces of two posts, with what the brackets take. */
  width: inches(96),
  post: squarePost('2-1/2 square tube'),
  gatePost: squarePost('4 square tube'),
  source,
} as const;
