import { phrase } from '../../phrases/phrase.ts';

/** The keys of the pad's own keyboard, row by row. `back` takes the last sign away. */
export const keypadRows = [
  ['7', '8', '9', "'", '1/8', '1/4'],
  ['4', '5', '6', '"', '3/8', '1/2'],
  ['1', '2', '3', '.', '5/8', '3/4'],
  ['-', '0', 'mm', 'back', '7/8', '1/16'],
] as const;

export type KeypadKey = (typeof keypadRows)[number][number];

/** What each key is called, where its sign does not say it. */
export const keyNames: Readonly<Partial<Record<KeypadKey, string>>> = {
  "'": phrase`feet`,
  '"': phrase`inches`,
  '.': phrase`point`,
  '-': phrase`dash`,
  mm: phrase`millimetres`,
  back: phrase`delete last sign`,
};

const isFraction = (key: KeypadKey): boolean => key.includes('/');

/** A text after one key of the keypad: a fraction stands apart from the number before it. */
export const afterKey = (text: string, key: KeypadKey): string => {
  if (key === 'back') return text.replace(/( ?\d+\/\d+|mm|.)$/u, '');
  return isFraction(key) && /\d$/.test(text) ? `${text} ${key}` : `${text}${key}`;
};
