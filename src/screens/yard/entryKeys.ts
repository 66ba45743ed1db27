import { phrase } from '../../phrases/phrase.ts';
import type { KeyRow } from '../help/keys/keyRow.ts';

/** The keys of a length, direction or height that is typed over the pad. */
export const entryKeys: readonly KeyRow<'set' | 'drop'>[] = [
  { keys: ['Enter'], deed: 'set', does: phrase`sets what was typed` },
  { keys: ['Escape'], deed: 'drop', does: phrase`drops what was typed` },
];
