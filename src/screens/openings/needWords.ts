import type { Need } from '../../engine/sign/standingsOf.ts';

/** What a gate wants of the office, in a word. */
export const needWords: Readonly<Record<Need, string>> = {
  stop: 'Stop',
  void: 'Void',
  unsigned: 'Unsigned',
  signed: 'Signed',
};
