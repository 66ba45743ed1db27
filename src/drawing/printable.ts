import { isPrintable } from './textWidth.ts';

/**
 * A text as the sheets can print it: one line, single spaces, and `?` for each character that the
 * sheet font lacks. Accents typed as marks of their own are joined to their letters first.
 */
export const printable = (text: string): string => {
  // nearly every text is plain already
  if (/^(?:[!-~]+(?: [!-~]+)*)?$/.test(text)) return text;
  return [...text.normalize('NFC').replace(/\s+/gu, ' ').trim()]
    .map((letter) => (isPrintable(letter) ? letter : '?'))
    .join('');
};
