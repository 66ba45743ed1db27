import type { Gap } from '../gate/gapAt.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What is said of an opening by its verdict. */
export const verdictWords: Readonly<Record<Gap['verdict'], string>> = {
  holds: phrase`holds`,
  'may hold': phrase`may hold`,
  'too narrow': phrase`too narrow`,
  'too wide': phrase`too wide`,
};
