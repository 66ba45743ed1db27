import { phrase } from '../../../phrases/phrase.ts';
import type { KeyRow } from './keyRow.ts';

/** The keys of the program on every screen. */
export const programKeys: readonly KeyRow<'help'>[] = [
  { keys: ['?'], deed: 'help', does: phrase`opens this page of keys and gestures` },
];

/** What the browser itself does with keys, and every sheet and key of the program is made for. */
export const browserKeys: readonly KeyRow<'next' | 'before' | 'press' | 'close'>[] = [
  { keys: ['Tab'], shift: false, deed: 'next', does: phrase`goes to the next key or field` },
  { keys: ['Tab'], shift: true, deed: 'before', does: phrase`goes to the one before` },
  { keys: ['Enter', ' '], deed: 'press', does: phrase`presses the key that has the focus` },
  {
    keys: ['Escape'],
    deed: 'close',
    does: phrase`closes the sheet that lies over the screen`,
  },
];
