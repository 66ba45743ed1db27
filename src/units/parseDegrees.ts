import { read, unread, type Parsed } from './parsed.ts';
import { quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

const number = String.raw`\d{1,3}(?:\.\d{1,12})?`;
const part = String.raw`\d{1,2}(?:\.\d{1,12})?`;
const degreesForm = new RegExp(
  `^(${number}) ?(?:°|degrees?|deg\\.?|d|o)?` +
    `(?:[ ,-]*(?:and )?(${part}) ?(?:'|minutes?|min\\.?|m)?` +
    `(?:[ ,-]*(?:and )?(${part}) ?(?:"|seconds?|sec\\.?|s)?)?)?$`,
);

const fractionForm = /^(\d{1,3}) (\d{1,2})\/(\d{1,2}) ?(?:°|degrees?|deg\.?|d|o)?$/;

/** Whole degrees and a fraction; null for anything else, and for a fraction of one or more. */
const withFraction = (text: string): number | null => {
  const [, whole, top, bottom] = fractionForm.exec(text) ?? [];
  if (whole === undefined || !(Number(top) < Number(bottom))) return null;
  return Number(whole) + Number(top) / Number(bottom);
};

/**
 * Reads degrees, minutes and seconds in small letters, zero or more: `26°10'30"`, `26-10-30`,
 * `26 10 30`, `26 1/2°`, `26d10m30s`, `26 degrees, 10 minutes and 30 seconds`, `26.175`. Minutes and seconds are
 * under 60; only the last part has decimals.
 * @returns degrees; or one line that quotes the text.
 */
export const parseDegrees = (text: string): Parsed<number> => {
  const fraction = withFraction(text.trim());
  if (fraction !== null) return read(fraction);
  const found = degreesForm.exec(text.trim());
  if (found === null) {
    return unread(phrase`${quotedText(text)} is not an angle: expected degrees such as 26°10'30"`);
  }
  const [, degrees = '', minutes, seconds] = found;
  if ((minutes !== undefined && degrees.includes('.')) || (seconds && minutes?.includes('.'))) {
    return unread(
      phrase`${quotedText(text)} has decimals before its last part: expected 26°10'30"`,
    );
  }
  if (Number(minutes ?? 0) >= 60 || Number(seconds ?? 0) >= 60) {
    return unread(phrase`${quotedText(text)} has 60 minutes or seconds or more: expected under 60`);
  }
  // in whole seconds, so that 26°10'30" is the same number however it is written
  return read((Number(degrees) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0)) / 3600);
};
