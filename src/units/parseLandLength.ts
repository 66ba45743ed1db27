import { inches, type Inches } from './inches.ts';
import { landLengths } from './landLengths.ts';
import { landUnits, type LandUnit } from './landUnits.ts';
import { read, unread, type Parsed } from './parsed.ts';
import { plainDeed, smallLetters } from './plainDeed.ts';
import { longestText, quotedText } from './quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

const bareForm = /^(?:\d{1,3}(?:,\d{3})+(?:\.\d*)?|\d+(?:\.\d*)?|\.\d+)$/;

const expected = phrase`expected a distance such as 285.10 feet, 4 chains 25 links or 86.90 m`;

/** Inches in one of a unit of land. */
export const inchesIn = (unit: LandUnit['name']): number =>
  landUnits.find(({ name }) => name === unit)?.inches ?? NaN;

/**
 * Reads a distance as deeds and plats write it: `285.10'`, `285.10 feet`, `95'-6"`, `4 chains 25 links`,
 * `16 1/2 rods`, `86.90 m`, `1,250.5 ft`. Zero or more; a bare number is in the unit `bare`.
 * @returns inches; or one line that quotes the text.
 */
export const parseLandLength = (text: string, bare: LandUnit['name'] = 'feet'): Parsed<Inches> => {
  const refused = (why: string) => unread(`${quotedText(text)} ${why}: ${expected}`);
  const line = smallLetters(plainDeed(text)).replace(/\s+/g, ' ').trim();
  if (line === '') return refused(phrase`is empty`);
  if (line.length > longestText) return refused(phrase`is too long`);
  if (bareForm.test(line)) return read(inches(Number(line.replaceAll(',', '')) * inchesIn(bare)));
  const [found, more] = landLengths(line);
  if (found === undefined || more !== undefined) return refused(phrase`is not a distance`);
  return found.at === 0 && found.end === line.length
    ? read(found.length)
    : refused(phrase`is not a distance`);
};
