import type { Inches } from '../units/inches.ts';
import { parseLength } from '../units/parseLength.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';

/** A length that is known between two bounds, in inches; both are the same for one length. */
export interface Range {
  readonly low: Inches;
  readonly high: Inches;
}

const bare = /^\s*[\d.]+\s*$/;
const metric = /(?:mm|cm|m)\s*$/i;

/** `40..50mm` says millimetres once for both. */
const lowText = (low: string, high: string): string =>
  bare.test(low) ? `${low.trim()}${metric.exec(high)?.[0] ?? ''}` : low;

/**
 * Reads what an option was given as `LOW..HIGH` or as one length for both, zero or more; a bare
 * number is inches. A refusal names the option and quotes the text.
 */
export const readRange = (name: string, text: string): Parsed<Range> => {
  const parts = text.split('..');
  const [first = '', last = first] = parts;
  if (parts.length > 2) {
    return unread(`--${name}: “${text}” is not a range: expected LOW..HIGH such as 1 5/8..1 7/8`);
  }
  const [low, high] = [parseLength(lowText(first, last)), parseLength(last)];
  if (!low.ok) return unread(`--${name}: ${low.reason}`);
  if (!high.ok) return unread(`--${name}: ${high.reason}`);
  if (low.value < 0) return unread(`--${name}: “${text}” is below zero`);
  if (low.value > high.value) {
    return unread(`--${name}: “${text}” falls: expected the smaller length first, as LOW..HIGH`);
  }
  return read({ low: low.value, high: high.value });
};
