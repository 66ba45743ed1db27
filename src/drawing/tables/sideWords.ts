import { phraseOf } from '../../phrases/phrase.ts';

/** What sheets call the two sides of one who looks along a line. */
export const sideWords = {
  left: phraseOf('side')`left`,
  right: phraseOf('side')`right`,
} as const;
