import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Edges of fabric whose mesh is narrower than this are not twisted: inches. */
export const leastTwistedMesh: { readonly length: Inches; readonly source: Source } = {
  length: inches(2),
  source: { text: 'ASTM A392-03 3.1.4', status: 'published' },
};

/** What the trade does where nobody says. */
export const usualSelvage: Source = {
  text: phrase`knuckled both edges up to 6 ft, twisted above: common practice, no published source; UFGS-02821A 2.1.1 has a twisted top and a knuckled bottom`,
  status: 'practice',
};
