import { textWidth } from './textWidth.ts';

const ellipsis = '…';

/** How many letters fit a width: each is measured once, however long the text is. */
const fitting = (
  letters: readonly string[],
  width: number,
  { size, weight }: { readonly size: number; readonly weight: 'regular' | 'bold' },
): number => {
  let taken = 0;
  const over = letters.findIndex((letter) => {
    taken += textWidth(letter, size, weight);
    return taken > width;
  });
  return over < 0 ? letters.length : over;
};

/**
 * A text cut to fit `width` (same unit as `size`), with an ellipsis in place of what was cut. A
 * width too small for the ellipsis alone gives an empty text.
 */
export const shorten = (
  text: string,
  width: number,
  size: number,
  weight: 'regular' | 'bold',
): string => {
  if (textWidth(text, size, weight) <= width) return text;
  const letters = [...text];
  const most = fitting(letters, width, { size, weight });
  // from there on back: the ellipsis takes room of its own
  for (let count = Math.min(most + 1, letters.length - 1); count >= 0; count -= 1) {
    const cut = letters.slice(0, count).join('').trimEnd() + ellipsis;
    if (textWidth(cut, size, weight) <= width) return cut;
  }
  return '';
};
