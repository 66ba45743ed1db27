import type { Flag } from '../../engine/flag.ts';
import { phraseOf } from '../../phrases/phrase.ts';

/** What sheets call the level of a flag. */
export const flagLevelWords: Readonly<Record<Flag['level'], string>> = {
  stop: phraseOf('flag')`stop`,
  settle: phraseOf('flag')`settle`,
  caution: phraseOf('flag')`caution`,
};
