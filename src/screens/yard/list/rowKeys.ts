import { phrase } from '../../../phrases/phrase.ts';
import type { KeyRow } from '../../help/keys/keyRow.ts';

/** The keys of the rows of the list. */
export const rowKeys: readonly KeyRow<'up' | 'down' | 'first' | 'last' | 'erase'>[] = [
  { keys: ['ArrowUp'], deed: 'up', does: phrase`goes to the row above` },
  { keys: ['ArrowDown'], deed: 'down', does: phrase`goes to the row below` },
  { keys: ['Home'], deed: 'first', does: phrase`goes to the first row` },
  { keys: ['End'], deed: 'last', does: phrase`goes to the last row` },
  { keys: ['Delete'], deed: 'erase', does: phrase`erases what the row is about` },
];

/** The keys of the list itself, wherever in it the focus is. */
export const listKeys: readonly KeyRow<'leave'>[] = [
  {
    keys: ['Escape'],
    deed: 'leave',
    does: phrase`gives up what is being drawn from the list, then closes it`,
  },
];
