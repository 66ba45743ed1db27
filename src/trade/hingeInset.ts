import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How far from the top and the bottom of a leaf its hinges are taken to be, inches. */
export const hingeInset = {
  length: inches(8),
  source: {
    text: phrase`hinges 8 in from the ends of a leaf: common practice, no published source`,
    status: 'practice',
  } satisfies Source,
};
