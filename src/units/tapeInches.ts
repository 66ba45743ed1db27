import { read, unread, type Parsed } from './parsed.ts';
import { phrase } from '../phrases/phrase.ts';

const number = String.raw`\d+(?:\.\d*)?|\.\d+`;
const quantityForm = new RegExp(`^(?:(?:(\\d+)[ -])?(\\d+)/(\\d+)|(${number}))$`);
const feetForm = /^([\d./ -]*?) ?(?:'|feet|foot|ft\.?)(?: ?- ?(?=[\d.])| ?)(.*)$/;
/** Whole feet, a dash, and inches that say that they are: `43-7 1/2"`; not the dash of `7-1/2"`. */
const dashedForm = /^(\d+)-(\d+(?:[ -]\d+\/\d+|\.\d*)?) ?(?:"|inches|inch|in\.?)$/;
const inchMark = / ?(?:"|inches|inch|in\.?)$/;

/** A decimal, a fraction, or a whole number and a fraction under 1; the reason lacks its subject. */
const quantity = (text: string): Parsed<number> => {
  const found = quantityForm.exec(text);
  if (found === null) return unread(phrase`is not a length`);
  const [, whole, top, bottom, decimal] = found;
  if (decimal !== undefined) return read(Number(decimal));
  if (Number(bottom) === 0) return unread(phrase`divides by zero`);
  const fraction = Number(top) / Number(bottom);
  if (whole === undefined) return read(fraction);
  // 5/4 alone is how some rules are read; 1 5/4 is a slip of the finger
  if (fraction >= 1) return unread(phrase`has a fraction that is not under 1`);
  return read(Number(whole) + fraction);
};

/** Feet and inches with only a dash between; null for any other text. Under 12 in, or it is a slip. */
const dashed = (text: string): Parsed<number> | null => {
  const [, feet, rest] = dashedForm.exec(text) ?? [];
  if (feet === undefined || rest === undefined) return null;
  const more = quantity(rest);
  if (!more.ok) return more;
  return more.value < 12 ? read(Number(feet) * 12 + more.value) : unread(phrase`is not a length`);
};

/**
 * Inches of zero or more in plain text of feet, of inches, or of whole feet and then inches, with
 * or without the inch mark. Inches past 12 are taken, as they are written on site. Without a foot
 * mark a dash parts feet from inches where the inch mark is there. Refuses with a reason that lacks
 * its subject.
 */
export const tapeInches = (text: string): Parsed<number> => {
  const found = feetForm.exec(text);
  if (found === null) return dashed(text) ?? quantity(text.replace(inchMark, ''));
  const [, feetText = '', rest = ''] = found;
  const feet = quantity(feetText);
  if (!feet.ok || rest === '') return feet.ok ? read(feet.value * 12) : feet;
  if (!/^\d+$/.test(feetText)) return unread(phrase`has part of a foot and then inches`);
  const more = quantity(rest.replace(inchMark, ''));
  return more.ok ? read(feet.value * 12 + more.value) : more;
};
