import type { Inches } from './inches.ts';
import type { LengthSystem } from './lengthStyle.ts';
import { parseLength } from './parseLength.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

/** The most lengths that one text may list. */
const most = 24;

/**
 * Reads a list such as `1 3/4, 1 7/8, 2`: lengths with a comma or semicolon between, 24 at most.
 * @param bare the unit of a number that has none, as in `parseLength`.
 * @returns inches of either sign in the order of the text, at least one; or one line that quotes
 *   the length that cannot be read.
 */
export const parseLengths = (
  text: string,
  bare: LengthSystem = 'inches',
): Parsed<readonly Inches[]> => {
  const parts = text.split(/[,;]/);
  if (parts.length > most) {
    return unread(phrase`${quotedText(text)} is too long a list: expected at most ${most} lengths`);
  }
  const lengths: Inches[] = [];
  for (const part of parts) {
    const length = parseLength(part, bare);
    if (!length.ok) return length;
    lengths.push(length.value);
  }
  return read(lengths);
};
