import type { Inches } from '../units/inches.ts';
import { parseLength } from '../units/parseLength.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';

/** What a shell leaves of `54' --max 10'` when the foot marks are not quoted. */
const eaten = / --[a-z]/;

/**
 * Reads the lengths that an option was given, each above zero; a number without a unit is inches.
 * A refusal names the option and quotes the text.
 */
export const readLengths = (name: string, texts: readonly string[]): Parsed<readonly Inches[]> => {
  const lengths: Inches[] = [];
  for (const text of texts) {
    if (eaten.test(text)) {
      return unread(
        `--${name}: “${text}” is two options in one: the shell took the foot marks for quotes; expected 54ft or "54'"`,
      );
    }
    const length = parseLength(text);
    if (!length.ok) return unread(`--${name}: ${length.reason}`);
    if (length.value <= 0) return unread(`--${name}: “${text}” is not above zero`);
    lengths.push(length.value);
  }
  return read(lengths);
};
