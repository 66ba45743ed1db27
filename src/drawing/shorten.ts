import { textWidth } from './textWidth.ts';

const ellipsis = '…';

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
  while (letters.length > 0) {
    letters.pop();
    const cut = letters.join('').trimEnd() + ellipsis;
    if (textWidth(cut, size, weight) <= width) return cut;
  }
  return '';
};
