import { isPrintable } from './textWidth.ts';

const [blank, last] = [0x20, 0x7e];

/** Whether a text is of ASCII letters with single spaces between them, as nearly every text is. */
const isPlain = (text: string): boolean => {
  let before = blank;
  for (let n = 0; n < text.length; n += 1) {
    const code = text.charCodeAt(n);
    if (code < blank || code > last || (code === blank && before === blank)) return false;
    before = code;
  }
  return text === '' || before !== blank;
};

/**
 * A text as the sheets can print it: one line, single spaces, and `?` for each character that the
 * sheet font lacks. Accents typed as marks of their own are joined to their letters first.
 */
export const printable = (text: string): string => {
  if (isPlain(text)) return text;
  return [...text.normalize('NFC').replace(/\s+/gu, ' ').trim()]
    .map((letter) => (isPrintable(letter) ? letter : '?'))
    .join('');
};
