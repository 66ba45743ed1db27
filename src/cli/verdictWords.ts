import type { Gap } from '../engine/gate/gapAt.ts';
import { phrase } from '../phrases/phrase.ts';

type Verdict = Gap['verdict'];

/** What is said of an opening as it was set, in a word or two. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  holds: phrase`holds`,
  'may hold': phrase`may hold`,
  'too narrow': phrase`too narrow`,
  'too wide': phrase`too wide`,
};

/** The same of one that misses what holds by a length as it is written. */
export const offBy = (verdict: Verdict, by: string): string => {
  if (verdict === 'too narrow') return phrase`too narrow by ${by}`;
  if (verdict === 'too wide') return phrase`too wide by ${by}`;
  return verdict === 'holds' ? phrase`holds by ${by}` : phrase`may hold by ${by}`;
};
