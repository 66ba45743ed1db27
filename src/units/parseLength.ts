import { inches, type Inches } from './inches.ts';
import type { LengthSystem } from './lengthStyle.ts';
import { read, unread, type Parsed } from './parsed.ts';

const longest = 40;

/** Inches in one of each unit. The foot and the inch are the international ones: 1 in = 25.4 mm. */
const bareUnit: Readonly<Record<LengthSystem, number>> = {
  feet: 12,
  inches: 1,
  'decimal feet': 12,
  mm: 1 / 25.4,
  m: 1 / 0.0254,
};

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One spelling for every way a keyboard or a phone writes fractions, primes and dashes. */
const plain = (text: string): string =>
  text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? sign}`)
    .replace(/⁄/g, '/')
    .replace(/″|”|“|''|′′/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/[−–—]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();

const number = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d*)?|\.\d+`;
const metricForm = new RegExp(`^(${number}) ?(mm|cm|m)$`);
const bareForm = new RegExp(`^(${number})$`);
const feetForm = new RegExp(`^(${number}) ?(?:'|ft\\.?|feet|foot)(?: ?- ?| |$|(?=[\\d.]))`);
const inchForm = new RegExp(
  `^(?:(\\d+)(?: |-| - ))?(\\d+)/(\\d+) ?(?:"|in\\.?|inch|inches)?$|^(${number}) ?(?:"|in\\.?|inch|inches)?$`,
);

const toNumber = (digits: string | undefined): number =>
  Number((digits ?? '0').replaceAll(',', ''));

/** Inches as whole number and fraction or as a decimal; null for anything else. */
const inchPart = (text: string): number | null => {
  const found = inchForm.exec(text);
  if (found === null) return null;
  const [, whole, top, bottom, decimal] = found;
  if (decimal !== undefined) return toNumber(decimal);
  const fraction = Number(top) / Number(bottom);
  // 1 5/4 is a slip of the finger; 5/4 alone is how some rules are read
  if (!Number.isFinite(fraction) || (whole !== undefined && fraction >= 1)) return null;
  return toNumber(whole) + fraction;
};

const imperial = (text: string): number | null => {
  const feet = feetForm.exec(text);
  if (feet === null) return inchPart(text);
  const rest = text.slice(feet[0].length);
  if (rest === '') return text.endsWith('-') ? null : toNumber(feet[1]) * 12;
  const more = inchPart(rest);
  return more === null ? null : toNumber(feet[1]) * 12 + more;
};

const unsigned = (text: string, bare: LengthSystem): number | null => {
  const metric = metricForm.exec(text);
  if (metric !== null) {
    const value = toNumber(metric[1]);
    if (metric[2] === 'mm') return value / 25.4;
    return metric[2] === 'cm' ? value / 2.54 : value / 0.0254;
  }
  const alone = bareForm.exec(text);
  if (alone !== null && bare !== 'inches') return toNumber(alone[1]) * bareUnit[bare];
  return imperial(text);
};

const quoted = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > longest ? `“${line.slice(0, longest)}…”` : `“${line}”`;
};

/**
 * Reads a length as it is written on a tape, a sheet or a phone: `56 1/4`, `9'-10 1/2"`,
 * `118.5in`, `12.25'`, `3005mm`, `3.005 m`, with Unicode fractions and primes.
 * @param bare the unit of a number that has none; fractions without a unit are inches.
 * @returns inches, of either sign, finite; or one line that quotes the text.
 */
export const parseLength = (text: string, bare: LengthSystem = 'inches'): Parsed<Inches> => {
  const refused = (why: string) => unread(`${quoted(text)} ${why}`);
  if (text.trim() === '') return refused(`is empty: expected a length such as 9'-10 1/2"`);
  if (text.length > longest) return refused('is too long for a length');
  const line = plain(text);
  if (/\d,\d{1,2}(?!\d)/.test(line)) return refused('has a comma: write decimals with a point');
  const negative = line.startsWith('-');
  const value = unsigned(negative ? line.slice(1).trim() : line, bare);
  if (value === null || !Number.isFinite(value)) {
    return refused(`is not a length: expected one such as 9'-10 1/2", 56 1/4 or 3005 mm`);
  }
  return read(inches(negative && value !== 0 ? -value : value));
};
