import type { TownMeasure } from '../../site/townRule.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a rule of a town limits, before its limit. */
export const measureWords: Readonly<Record<TownMeasure, string>> = {
  'fence no higher than': phrase`fence no higher than`,
  'pool barrier no lower than': phrase`pool barrier no lower than`,
  'gap under fabric no more than': phrase`gap under fabric no more than`,
  'fence no nearer the boundary than': phrase`fence no nearer the boundary than`,
  'holes no shallower than': phrase`holes no shallower than`,
  'barbed wire no lower than': phrase`barbed wire no lower than`,
  'clear passage no less than': phrase`clear passage no less than`,
};
