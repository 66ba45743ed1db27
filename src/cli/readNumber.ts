import { read, unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { valueOf, type Call } from './call.ts';
import { englishOf, phrase } from '../phrases/phrase.ts';

/** What a number may be, and what it counts: `mph`, `lb`. English is read too. */
export interface NumberRange {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

const form = /^\d{1,9}(?:\.\d{1,9})?$/;

/**
 * Reads a plain number that an option was given, with or without its unit; null where it was not given. A
 * refusal names the option and quotes the text.
 */
export const readNumber = (
  call: Call,
  name: string,
  { from, to, unit }: NumberRange,
): Parsed<number | null> => {
  const text = valueOf(call, name);
  if (text === null) return read(null);
  const bare = text.trim().toLowerCase().replace(unit, '').replace(englishOf(unit), '').trim();
  const value = form.test(bare) ? Number(bare) : NaN;
  if (value >= from && value <= to) return read(value);
  return unread(phrase`--${name}: ${quotedText(text)}: expected ${from} to ${to} ${unit}`);
};
