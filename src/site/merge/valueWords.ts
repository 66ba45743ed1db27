import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Site } from '../site.ts';
import { fieldName } from './fieldName.ts';
import { isId, nameOfId } from './partName.ts';
import { asItIs, joined, phrase, phraseOf } from '../../phrases/phrase.ts';
import { choiceWords } from './choiceWords.ts';

const angles: ReadonlySet<string> = new Set(['turns', 'cornerAngle', 'square', 'bearing']);

/** Numbers that are no lengths; every other number of a document is inches. */
const plain: ReadonlySet<string> = new Set(
  'count bag strands fraction speed tapeShare pullGrade rock access solid shows latitude longitude times spares'.split(
    ' ',
  ),
);

const longest = 120;

const shortened = (text: string): string =>
  text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;

const numberWords = (site: Site, name: string, value: number): string => {
  if (angles.has(name)) return formatAngle(radians(value));
  if (plain.has(name)) return String(Math.round(value * 1e6) / 1e6);
  return formatLength(inches(value), site.lengths);
};

/** Fields that say nothing to a person: keys of rows, check values, bytes, what a check rested on. */
const silent: ReadonlySet<string> = new Set([
  'order',
  'check',
  'data',
  'rested',
  'u',
  'v',
  'ties',
  'picture',
]);

/** What a person typed, so that no word of it is taken for a choice. */
const typed: ReadonlySet<string> = new Set(
  'name customer place drawnBy date revision remark label text on by day said reason words source town point of file grade'.split(
    ' ',
  ),
);

const textWords = (name: string, value: string): string => {
  const text = shortened(value.replace(/\s+/g, ' ').trim());
  return typed.has(name) || !Object.hasOwn(choiceWords, text)
    ? asItIs(text)
    : (choiceWords[text] ?? text);
};

const objectWords = (site: Site, value: object): string => {
  const said = Object.entries(value)
    .filter(([name, inner]) => !silent.has(name) && inner !== null && inner !== '')
    .map(([name, inner]) => {
      const text = valueWords(site, name, inner);
      if (name === 'kind' || /^[a-z-]+:/.test(name) || name === 'label') return text;
      return text === '' ? '' : joined([fieldName(name), text], ' ');
    });
  return joined(
    said.filter((text) => text !== ''),
    ', ',
  );
};

/** A value of a document in words, lengths as the site writes them; at most 120 letters. */
export const valueWords = (site: Site, name: string, value: unknown): string => {
  if (value === undefined || value === null || value === '') return phrase`not said`;
  if (typeof value === 'boolean') return value ? phraseOf('choice')`yes` : phraseOf('choice')`no`;
  if (typeof value === 'number') return numberWords(site, name.split(' ')[0] ?? name, value);
  if (typeof value === 'string') {
    return isId(value) ? nameOfId(site, value) : textWords(name, value);
  }
  if (Array.isArray(value)) {
    return (
      shortened(
        joined(
          value.map((one) => valueWords(site, name, one)),
          ', ',
        ),
      ) || phrase`none`
    );
  }
  if (typeof value !== 'object') return '';
  return shortened(objectWords(site, value)) || phrase`none`;
};
