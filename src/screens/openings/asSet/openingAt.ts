import { phrase } from '../../../phrases/phrase.ts';

/** What the two widths of an opening that was set are called. */
export const openingAt = {
  top: phrase`Opening at the top`,
  bottom: phrase`Opening at the bottom`,
} as const;
