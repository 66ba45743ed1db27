import { parseDegrees } from './parseDegrees.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { plainDeed, smallLetters } from './plainDeed.ts';
import { longestText, quotedText } from './quotedText.ts';
import { fromDegrees, type Radians } from './radians.ts';
import { phrase } from '../phrases/phrase.ts';

const north = 'north|south|n|s';
const east = 'east|west|e|w';
const inside = `[\\d.,°'"/ -]|degrees?|deg|minutes?|min|seconds?|sec|and|d|m|s|o(?=[ \\d])`;

/**
 * A quadrant bearing somewhere in a text of small letters: its first letter, what stands between, its
 * last letter. What stands between need not be an angle.
 */
export const quadrantForm = `(?<![a-z0-9])(${north})\\.?(?![a-z])((?:${inside}){1,40}?)(${east})(?![a-z0-9])\\.?`;

const quadrant = new RegExp(`^${quadrantForm}$`);
const cardinal = /^(?:due )?(north|south|east|west|n|s|e|w)\.?$/;
const azimuth = /^(?:azimuth|az\.?)? ?(?:of )?(\d.*)$/;

const cardinals: Readonly<Record<string, number>> = { n: 0, e: 90, s: 180, w: 270 };

const expected = phrase`expected a bearing such as N 26°10'30" E or an azimuth such as 117°22'40"`;

/** Degrees clockwise from north of the three parts of a quadrant bearing, in small letters. */
export const quadrantDegrees = (from: string, angle: string, to: string): Parsed<number> => {
  const turned = parseDegrees(angle.replace(/^[\s.,-]+|[\s,-]+$/g, ''));
  if (!turned.ok) return turned;
  if (turned.value > 90) {
    return unread(phrase`${quotedText(angle)} in a bearing is over 90°: ${expected}`);
  }
  const off = to.startsWith('e') ? turned.value : -turned.value;
  if (from.startsWith('s')) return read(180 - off);
  // not by a remainder, which would take the last bits from small angles
  return read(off < 0 ? 360 + off : off + 0);
};

/** Degrees clockwise from north, 0 up to 360, of a whole text in small letters. */
const degreesOf = (line: string): Parsed<number> => {
  const [, from = '', angle = '', to = ''] = quadrant.exec(line) ?? [];
  if (/\d/.test(angle)) return quadrantDegrees(from, angle, to);
  const way = cardinal.exec(line)?.[1]?.[0];
  if (way !== undefined) return read(cardinals[way] ?? 0);
  const turned = azimuth.exec(line)?.[1];
  if (turned === undefined) return unread(phrase`is not a bearing: ${expected}`);
  const degrees = parseDegrees(turned);
  if (degrees.ok && degrees.value >= 360)
    return unread(phrase`is a whole turn or more: expected under 360°`);
  return degrees;
};

/**
 * Reads the direction of a course as deeds and plats write it: quadrant bearings (`N 26°10'30" E`,
 * `N26-10-30E`, `n 26d10m30s e`, `N 26.175° E`, `North 26 degrees 10 minutes 30 seconds East`), `due
 * north`, and azimuths from north (`117°22'40"`). Parts after a point are decimal degrees: 26.1030 is
 * not 26°10'30".
 * @returns radians clockwise from north, from 0 to under a whole turn; or one line that quotes the text.
 */
export const parseBearing = (text: string): Parsed<Radians> => {
  const line = smallLetters(plainDeed(text)).replace(/\s+/g, ' ').trim();
  if (line === '') return unread(phrase`${quotedText(text)} is empty: ${expected}`);
  if (line.length > 2 * longestText)
    return unread(phrase`${quotedText(text)} is too long: ${expected}`);
  const degrees = degreesOf(line);
  if (degrees.ok) return read(fromDegrees(degrees.value));
  return unread(
    degrees.reason.startsWith('“') ? degrees.reason : `${quotedText(text)} ${degrees.reason}`,
  );
};
