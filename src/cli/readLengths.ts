import type { Inches } from '../units/inches.ts';
import { parseLength } from '../units/parseLength.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';

/**
 * Reads the lengths that an option was given, each above zero; a number without a unit is inches.
 * A refusal names the option and quotes the text.
 */
export const readLengths = (name: string, texts: readonly string[]): Parsed<readonly Inches[]> => {
  const lengths: Inches[] = [];
  for (const text of texts) {
    const length = parseLength(text);
    if (!length.ok) return unread(`--${name}: ${length.reason}`);
    if (length.value <= 0) return unread(`--${name}: “${text}” is not above zero`);
    lengths.push(length.value);
  }
  return read(lengths);
};
