import { inches, type Inches } from './inches.ts';
import type { LengthSystem } from './lengthStyle.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { plainText } from './plainText.ts';
import { longestText, quotedText } from './quotedText.ts';
import { tapeInches } from './tapeInches.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a number is taken to be followed by where nothing follows it. */
const bareMark: Readonly<Record<LengthSystem, string>> = {
  feet: "'",
  inches: '"',
  'decimal feet': "'",
  mm: 'mm',
  m: 'm',
};

/** Tenths of a millimetre in each metric unit, as powers of ten; an inch has 254 of them. */
const metricPower: Readonly<Record<string, number>> = { mm: 1, cm: 2, m: 4 };

const bareForm = /^[\d.,]+$/;
const bareFraction = /^(?:\d+(?: |-| - ))?\d+\/\d+$/;
const metricForm = /^(\d+(?:\.\d*)?|\.\d+) ?(mm|cm|m)$/;
const thousands = /(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+(?![\d,])/g;

const expected = phrase`expected a length such as 9'-10 1/2", 56 1/4 or 3005 mm`;

/** The text without the commas of its thousands; refused where a comma may be a decimal one. */
const withoutCommas = (text: string): Parsed<string> => {
  const bare = text.replace(thousands, (digits) => digits.replaceAll(',', ''));
  if (/\d,|,\d/.test(bare))
    return unread(phrase`has a decimal comma: expected a point, such as 9.5`);
  // 3,005 m may be three metres or three thousand
  if (bare !== text && /\d ?c?m$/.test(text)) {
    return unread(
      phrase`has a comma that can be read in two ways: expected a point or none, such as 3.005 m`,
    );
  }
  return read(bare);
};

/** Inches of zero or more in plain text that has its unit; the reason lacks its subject. */
const unsigned = (text: string): Parsed<number> => {
  const plain = withoutCommas(text);
  if (!plain.ok) return plain;
  const metric = metricForm.exec(plain.value);
  if (metric !== null) {
    // in whole tenths 304.8 mm is 12 in and 3.005 m is 3005 mm, both to the last bit
    return read(Number(`${metric[1]}e${metricPower[metric[2] ?? 'mm']}`) / 254);
  }
  const tape = tapeInches(plain.value);
  return tape.ok ? tape : unread(`${tape.reason}: ${expected}`);
};

/**
 * Reads a length as it is written on a tape, a sheet or a phone: `56 1/4`, `9'-10 1/2"`,
 * `118.5in`, `12.25'`, `3005mm`, `3.005 m`, with Unicode fractions, primes and dashes, and
 * thousands commas. An inch is 25.4 mm (international yard and pound, 1959).
 * @param bare the unit of a number that has none; a fraction without a unit
 *   is inches, but refused where a number would be feet.
 * @returns inches, finite, of either sign, never negative zero; or one line that quotes the text.
 */
export const parseLength = (text: string, bare: LengthSystem = 'inches'): Parsed<Inches> => {
  const refused = (why: string) => unread(`${quotedText(text)} ${why}`);
  const line = plainText(text);
  if (line === '') return refused(phrase`is empty: ${expected}`);
  if (text.trim().length > longestText) return refused(phrase`is too long: ${expected}`);
  const negative = line.startsWith('-');
  const size = negative ? line.slice(1).trim() : line;
  if (bareMark[bare] === "'" && bareFraction.test(size)) {
    return refused(phrase`may be feet or inches: expected a unit, such as 9'-10 1/2" or 56 1/4"`);
  }
  const value = unsigned(bareForm.test(size) ? `${size}${bareMark[bare]}` : size);
  if (!value.ok) return refused(value.reason);
  return read(inches(negative && value.value !== 0 ? -value.value : value.value));
};
