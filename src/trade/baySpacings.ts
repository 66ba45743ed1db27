import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { maxSpacing } from './spacing.ts';
import { phrase } from '../phrases/phrase.ts';

/** What is published for the longest bay, inches between centres, the shortest first. */
export const baySpacings: readonly { readonly length: Inches; readonly source: Source }[] = [
  {
    length: inches(3000 / 25.4),
    source: { text: phrase`UK practice (BS 1722 class): 3 m`, status: 'published' },
  },
  maxSpacing,
  {
    length: inches(144),
    source: { text: 'LA County Code Title 26 §6605.2.3: 12 ft', status: 'published' },
  },
];
