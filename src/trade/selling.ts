import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How a thing is sold, and how many more of it go on the truck than were counted. */
export interface Selling {
  /** How the code of an item begins. */
  readonly code: string;
  /** What it is sold in, such as `bag of 100`; for lengths in inches. */
  readonly pack: { readonly name: string; readonly holds: number };
  /** So much of what was counted on top, 0 to 1. */
  readonly spare: number;
  readonly source: Source;
}

const practice: Source = {
  text: phrase`common practice, no published source`,
  status: 'practice',
};
const memory: Source = { text: phrase`from memory`, status: 'memory' };

const feet = (value: number): Inches => inches(12 * value);

/** What is not named here is sold one by one, or by the length, with no spares. */
export const selling: readonly Selling[] = [
  {
    code: 'tie-post',
    pack: { name: phrase`bag of 100`, holds: 100 },
    spare: 0.05,
    source: practice,
  },
  {
    code: 'tie-rail',
    pack: { name: phrase`bag of 100`, holds: 100 },
    spare: 0.05,
    source: practice,
  },
  {
    code: 'hog-ring',
    pack: { name: phrase`box of 100`, holds: 100 },
    spare: 0.05,
    source: practice,
  },
  { code: 'bolt', pack: { name: phrase`box of 100`, holds: 100 }, spare: 0.02, source: practice },
  {
    code: 'bolt-large',
    pack: { name: phrase`box of 50`, holds: 50 },
    spare: 0.02,
    source: practice,
  },
  {
    code: 'tension-wire',
    pack: { name: phrase`coil of 1,000 ft`, holds: feet(1000) },
    spare: 0,
    source: practice,
  },
  {
    code: 'barbed-wire',
    pack: { name: phrase`roll of 80 rods, 1,320 ft`, holds: feet(1320) },
    spare: 0,
    source: memory,
  },
];

/** A bag of dry concrete by its weight: pounds, and the cubic feet that it makes. */
export interface ConcreteBag {
  readonly pounds: 40 | 50 | 60 | 80;
  readonly makes: number;
}

/** Bags from small to large. */
export const concreteBags: readonly ConcreteBag[] = [
  { pounds: 40, makes: 0.3 },
  { pounds: 50, makes: 0.375 },
  { pounds: 60, makes: 0.45 },
  { pounds: 80, makes: 0.6 },
];

export const concreteBagSource: Source = {
  text: phrase`yield as data sheets of bag makers tell it: common practice, no published source`,
  status: 'practice',
};
