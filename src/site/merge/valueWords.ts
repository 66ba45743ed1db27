import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Site } from '../site.ts';
import { fieldName } from './fieldName.ts';
import { isId, nameOfId } from './partName.ts';

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

const objectWords = (site: Site, value: object): string => {
  const said = Object.entries(value)
    .filter(([name, inner]) => !silent.has(name) && inner !== null && inner !== '')
    .map(([name, inner]) => {
      const text = valueWords(site, name, inner);
      if (name === 'kind' || /^[a-z-]+:/.test(name) || name === 'label') return text;
      return text === '' ? '' : `${fieldName(name)} ${text}`;
    });
  return said.filter((text) => text !== '').join(', ');
};

/** A value of a document in words, lengths as the site writes them; at most 120 letters. */
export const valueWords = (site: Site, name: string, value: unknown): string => {
  if (value === undefined || value === null || value === '') return 'not said';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return numberWords(site, name.split(' ')[0] ?? name, value);
  if (typeof value === 'string') {
    return isId(value) ? nameOfId(site, value) : shortened(value.replace(/\s+/g, ' ').trim());
  }
  if (Array.isArray(value)) {
    return shortened(value.map((one) => valueWords(site, name, one)).join(', ')) || 'none';
  }
  if (typeof value !== 'object') return '';
  return shortened(objectWords(site, value)) || 'none';
};
