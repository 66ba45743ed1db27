import { phrase } from '../../phrases/phrase.ts';
import type { KeyRow } from '../help/keys/keyRow.ts';

/** The keys of a field on a card or a sheet. */
export const fieldKeys: readonly KeyRow<'enter' | 'back'>[] = [
  { keys: ['Enter'], deed: 'enter', does: phrase`takes what was typed; so does leaving the field` },
  { keys: ['Escape'], deed: 'back', does: phrase`brings the last good value back` },
];
