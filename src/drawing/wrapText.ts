import { printable } from './printable.ts';
import { shorten } from './shorten.ts';
import { textWidth } from './textWidth.ts';
import { textWords } from './textWords.ts';

/** Lines are added up in so many units of an em, in which the widths of letters are whole numbers. */
const thousandths = 1000;

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
    const space = textWidth(' ', thousandths, weight);
    let taken = 0;
    for (const word of textWords(printable(paragraph))) {
      const last = lines.at(-1);
      const own = textWidth(word, thousandths, weight);
      if (last !== undefined && ((taken + space + own) * size) / thousandths <= width) {
        lines[lines.length - 1] = `${last} ${word}`;
        taken += space + own;
      } else if (word !== '') {
        const line = shorten(word, width, size, weight);
        lines.push(line);
        taken = textWidth(line, thousandths, weight);
      }
    }
    return lines;
  });
