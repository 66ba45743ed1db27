import type { Flag } from '../engine/flag.ts';
import { phraseOf } from '../phrases/phrase.ts';

/** How grave a flag or a remark is, in a word. */
export const levelWords: Readonly<Record<Flag['level'], string>> = {
  stop: phraseOf('flag')`stop`,
  settle: phraseOf('flag')`settle`,
  caution: phraseOf('flag')`caution`,
};
