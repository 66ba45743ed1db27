import type { Becomes } from '../site/becomes.ts';
import { offers } from '../site/becomes.ts';
import type { FoundGroup } from '../site/found.ts';
import { wholeFile } from './drawn.ts';

/** What a layer is likely to be, by how a word of its name begins; the first that fits counts. */
const words: readonly (readonly [RegExp, Becomes])[] = [
  [/\b(?:post|bay|hole|tag|swing|gate|dim|title|hatch|grid)/, 'leave out'],
  [/\b(?:gas|fuel)/, 'utility, gas'],
  [/\b(?:elec|power)/, 'utility, electric'],
  [/\b(?:comm|tele|phone|cable|fib)/, 'utility, communication'],
  [/\b(?:reclaim|irrig)/, 'utility, reclaimed'],
  [/\b(?:sewer|sanit|storm|drain)/, 'utility, sewer'],
  [/\bpool/, 'pool'],
  [/\bwater/, 'utility, water'],
  [/\bfenc/, 'fence line'],
  [/\b(?:prop|bound|bndy|parcel|lots?\b)/, 'boundary'],
  [/\b(?:bldg|build|house|struct|garage|shed)/, 'building'],
  [/\b(?:pav|walk|drive|conc|asph|patio|road)/, 'paving'],
  [/\bsight/, 'sight triangle'],
  [/\bfront yard/, 'front yard'],
  [/\bkeep/, 'keep-out'],
  [/\b(?:mark|pin|monument|corner|control)/, 'mark'],
  [/\b(?:shot|spot|elev|grade|topo)/, 'grade shot'],
  [/\b(?:note|text)/, 'note'],
];

const ofWhole: Readonly<Record<FoundGroup['shape'], Becomes>> = {
  areas: 'boundary',
  holes: 'boundary',
  lines: 'boundary',
  points: 'mark',
  heights: 'grade shot',
  texts: 'note',
};

/**
 * What a group of a file becomes unless a person chooses otherwise: what its layer's name says, where
 * the group offers that, else nothing; nothing where its layer is off or frozen. A file without layers becomes boundaries, marks and grade shots.
 */
export const usualBecomes = ({
  layer,
  shape,
  hidden = false,
}: Pick<FoundGroup, 'layer' | 'shape' | 'hidden'>): Becomes => {
  if (hidden) return 'leave out';
  if (layer === wholeFile) return ofWhole[shape];
  const name = layer.toLowerCase().replace(/[^a-z]+/g, ' ');
  const found = words.find(([word]) => word.test(name))?.[1] ?? 'leave out';
  return offers[shape].includes(found) ? found : 'leave out';
};
