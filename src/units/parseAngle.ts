import { read, unread, type Parsed } from './parsed.ts';
import { plainText } from './plainText.ts';
import { longestText, quotedText } from './quotedText.ts';
import { fromDegrees, type Radians } from './radians.ts';
import { phrase } from '../phrases/phrase.ts';

const degreesForm = /^(-? ?(?:\d+(?:\.\d*)?|\.\d+)) ?(?:°|º|˚|deg\.?|degrees?)?$/;

const expected = phrase`expected degrees such as 45 or 22.5°`;

/**
 * Reads an angle in degrees: `45`, `45°`, `45.5 deg`, `-30°`. Whole turns and signs are kept as
 * they are written.
 * @returns radians, finite, never negative zero; or one line that quotes the text.
 */
export const parseAngle = (text: string): Parsed<Radians> => {
  const refused = (why: string) => unread(`${quotedText(text)} ${why}`);
  const line = plainText(text);
  if (line === '') return refused(phrase`is empty: ${expected}`);
  if (text.trim().length > longestText) return refused(phrase`is too long: ${expected}`);
  if (/\d,\d/.test(line))
    return refused(phrase`has a decimal comma: expected a point, such as 22.5°`);
  const found = degreesForm.exec(line);
  if (found === null) return refused(phrase`is not an angle: ${expected}`);
  const degrees = Number(found[1]?.replace(' ', ''));
  return read(fromDegrees(degrees === 0 ? 0 : degrees));
};
