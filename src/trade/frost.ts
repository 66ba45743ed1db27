import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** How much deeper than frost a footing goes, inches. */
export const belowFrost = inches(6);

export const frostSource: Source = {
  text: phrase`6 in below the depth of frost that the local authority tells; from memory`,
  status: 'memory',
};

/** A post set in rock: the core is so much wider than the post, and at least so deep; inches. */
export const rockCore = {
  wider: inches(1),
  depth: inches(12),
  source: {
    text: phrase`MIL-HDBK-1013/10, glossary: core 1 in larger than the post, 12 in deep, grouted`,
    status: 'published',
  } satisfies Source,
};
