import { parseAzimuth } from './azimuth.ts';
import { compassName } from './compassName.ts';
import { read, type Parsed } from './parsed.ts';
import { radians, type Radians } from './radians.ts';
import { phraseOf } from '../phrases/phrase.ts';

/** The eight winds from east counter-clockwise: their letters and names, and those of the language spoken. */
const winds: readonly (readonly string[])[] = [
  ['e', 'east', phraseOf('wind')`E`],
  ['ne', 'northeast', phraseOf('wind')`NE`],
  ['n', 'north', phraseOf('wind')`N`],
  ['nw', 'northwest', phraseOf('wind')`NW`],
  ['w', 'west', phraseOf('wind')`W`],
  ['sw', 'southwest', phraseOf('wind')`SW`],
  ['s', 'south', phraseOf('wind')`S`],
  ['se', 'southeast', phraseOf('wind')`SE`],
];

const plain = (text: string): string => text.toLowerCase().replace(/[\s-]/g, '');

/**
 * Reads a direction as an angle counter-clockwise from east: one of the eight winds by its name or its
 * letters (`north`, `north-east`, `NE`), in English or in the language spoken, or degrees clockwise from
 * north as `parseAzimuth` reads them.
 */
export const parseWay = (text: string): Parsed<Radians> => {
  const word = plain(text);
  for (const [n, names] of winds.entries()) {
    const angle = radians((n * Math.PI) / 4);
    if ([...names, compassName(angle)].some((name) => plain(name) === word)) return read(angle);
  }
  return parseAzimuth(text);
};
