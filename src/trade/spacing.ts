import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import type { Inches } from '../units/inches.ts';

/**
 * The farthest that line posts usually stand apart: centre to centre, parallel to the grade, all
 * bays of a stretch alike. Screens, slats and signs call for less (ASTM F1043-18 1.1).
 */
export const maxSpacing: { readonly length: Inches; readonly source: Source } = {
  length: inches(120),
  source: { text: 'ASTM F567-07 4.1', status: 'published' },
};
