import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * The most that there may be between the ground and the bottom of fabric, unless a spec says
 * otherwise. The source asks it of gates.
 */
export const defaultGapUnder: { readonly length: Inches; readonly source: Source } = {
  length: inches(2),
  source: {
    text: phrase`City of Everett WA, Beverly Park Substation sitework specification: gates 2 in at most above grade`,
    status: 'published',
  },
};
