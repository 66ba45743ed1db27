import type { Inches } from '../units/inches.ts';
import { parseLength } from '../units/parseLength.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { tooLong } from './tooLong.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * Reads the lengths that an option was given, each above zero and within what a site holds; a number
 * without a unit is inches. A refusal names the option and quotes the text.
 */
export const readLengths = (name: string, texts: readonly string[]): Parsed<readonly Inches[]> => {
  const lengths: Inches[] = [];
  for (const text of texts) {
    const length = parseLength(text);
    if (!length.ok) return unread(`--${name}: ${length.reason}`);
    if (length.value <= 0) {
      return unread(
        phrase`--${name}: ${quotedText(text)} is not above zero: expected a length that is`,
      );
    }
    const fault = tooLong(name, text, length.value);
    if (fault !== null) return fault;
    lengths.push(length.value);
  }
  return read(lengths);
};
