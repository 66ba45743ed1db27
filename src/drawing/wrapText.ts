import { printable } from './printable.ts';
import { shorten } from './shorten.ts';
import { textWidth } from './textWidth.ts';
import { textWords } from './textWords.ts';

/** How a paragraph is set: the room for a line, the em (same unit) and the weight. */
export interface Setting {
  readonly width: number;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
}

/**
 * A text in lines that fit, broken between words but not before the fraction of a length; a word
 * longer than a line is cut with an ellipsis. Line breaks of the text are kept. An empty text has
 * no lines.
 */
export const wrapText = (text: string, { width, size, weight }: Setting): string[] =>
  text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    for (const word of textWords(printable(paragraph))) {
      const last = lines.at(-1);
      const longer = last === undefined ? word : `${last} ${word}`;
      if (last !== undefined && textWidth(longer, size, weight) <= width) {
        lines[lines.length - 1] = longer;
      } else if (word !== '') {
        lines.push(shorten(word, width, size, weight));
      }
    }
    return lines;
  });
