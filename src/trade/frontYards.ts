import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How high fence may stand in a new front yard, inches, open or not, until somebody says what the local code has. */
export const usualFrontYard = {
  solid: inches(48),
  open: inches(48),
  source: {
    text: phrase`front yards: 4 ft is common practice, no published source; a default until somebody says what the local code has`,
    status: 'practice',
  } satisfies Source,
};
