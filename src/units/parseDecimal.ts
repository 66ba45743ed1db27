import { read, unread, type Parsed } from './parsed.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

/** The least and the most that a number may be. */
export interface DecimalLimits {
  readonly low: number;
  readonly high: number;
}

const form = /^\d{1,6}(?:\.\d{1,6})?$/;

/**
 * A plain number as a list has it: digits, and a point before up to six decimals, from `low` to `high`. A
 * comma is refused, since `1,250` would mean two things, and so are signs and anything else.
 */
export const parseDecimal = (text: string, { low, high }: DecimalLimits): Parsed<number> => {
  const bare = text.trim();
  const value = form.test(bare) ? Number(bare) : null;
  if (value !== null && value >= low && value <= high) return read(value);
  const found = bare === '' ? phrase`nothing` : quotedText(text);
  const comma = /^\d+,\d+$/.test(bare);
  return unread(
    comma
      ? phrase`expected a point before the decimals, as in 0.5; found ${found}`
      : phrase`expected a number from ${low} to ${high} such as 1.5, found ${found}`,
  );
};
