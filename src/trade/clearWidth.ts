import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** The least clear width of a gate on an accessible route, inches, and how it is measured. */
export const leastClearWidth: { readonly width: Inches; readonly source: Source } = {
  width: inches(32),
  source: {
    text: phrase`2010 ADA 404.2.3 and UFAS 4.13.5: clear width is measured with the leaf at 90 degrees`,
    status: 'published',
  },
};
