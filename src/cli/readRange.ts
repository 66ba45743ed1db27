import { parseRange, type LengthRange } from '../units/parseRange.ts';
import { unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { tooLong } from './tooLong.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * Reads what an option was given as `LOW..HIGH` or as one length for both, from zero to what a site
 * holds; a bare number is inches. A refusal names the option and quotes the text.
 */
export const readRange = (name: string, text: string): Parsed<LengthRange> => {
  const range = parseRange(text);
  if (!range.ok) return unread(`--${name}: ${range.reason}`);
  if (range.value.low < 0) {
    return unread(phrase`--${name}: ${quotedText(text)} is below zero: expected zero or more`);
  }
  return tooLong(name, text, range.value.high) ?? range;
};
