import type { Need } from '../../engine/sign/standingsOf.ts';
import { phraseOf } from '../../phrases/phrase.ts';

/** What a gate wants of the office, in a word. */
export const needWords: Readonly<Record<Need, string>> = {
  stop: phraseOf('flag')`Stop`,
  void: phraseOf('sign-off')`Void`,
  unsigned: phraseOf('sign-off')`Unsigned`,
  signed: phraseOf('sign-off')`Signed`,
};
