import type { Inches } from './inches.ts';
import type { LengthSystem } from './lengthStyle.ts';
import { parseLength } from './parseLength.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { plainText } from './plainText.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

/** A length known between two bounds, in inches; low is never above high. */
export interface LengthRange {
  readonly low: Inches;
  readonly high: Inches;
}

const between = /\.\.|\sto\s/i;
const bareForm = /^-? ?[\d.,]+$/;
const unitForm = /^-? ?[\d.,]+ ?([^\d .,/-]+\.?)$/;

/** `40..50mm` says its unit once for both bounds. */
const lowText = (low: string, high: string): string =>
  bareForm.test(plainText(low)) ? `${low.trim()}${unitForm.exec(plainText(high))?.[1] ?? ''}` : low;

/**
 * Reads `1 3/4..2` or `1 3/4 to 2` as two bounds, and one length as both. A bare low bound has the
 * unit of a high bound that is one number with a unit.
 * @param bare the unit of a number that has none, as in `parseLength`.
 * @returns inches of either sign, low at most high; or one line that quotes the text.
 */
export const parseRange = (text: string, bare: LengthSystem = 'inches'): Parsed<LengthRange> => {
  const refused = (why: string) => unread(phrase`${quotedText(text)} ${why}, such as 1 3/4..2`);
  const parts = text.split(between);
  const [first = '', last = first] = parts;
  if (parts.length > 2 || text.includes('...')) {
    return refused(phrase`is not a range: expected two lengths`);
  }
  if (parts.length === 2 && parts.some((part) => part.trim() === '')) {
    return refused(phrase`has one end only: expected two lengths`);
  }
  const low = parseLength(lowText(first, last), bare);
  if (!low.ok) {
    // the text as it was written is the better one to quote
    const asWritten = parseLength(first, bare);
    return asWritten.ok ? low : asWritten;
  }
  const high = parseLength(last, bare);
  if (!high.ok) return high;
  if (low.value > high.value) {
    return refused(phrase`falls: expected the smaller length first`);
  }
  return read({ low: low.value, high: high.value });
};
