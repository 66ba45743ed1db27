import { parseRange, type LengthRange } from '../units/parseRange.ts';
import { unread, type Parsed } from '../units/parsed.ts';

/**
 * Reads what an option was given as `LOW..HIGH` or as one length for both, zero or more; a bare
 * number is inches. A refusal names the option and quotes the text.
 */
export const readRange = (name: string, text: string): Parsed<LengthRange> => {
  const range = parseRange(text);
  if (!range.ok) return unread(`--${name}: ${range.reason}`);
  return range.value.low < 0 ? unread(`--${name}: “${text}” is below zero`) : range;
};
