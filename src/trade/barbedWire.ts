import { inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** A strand as wind meets it: two wires twisted, inches across. */
export const barbedStrand = {
  across: inches(0.198),
  source: {
    text: phrase`a strand is two 12-1/2 ga wires of .099 in: ASTM A121, from memory`,
    status: 'memory',
  },
} as const;

/** Arms at 45 degrees hold their outer strand so far out, and so so far over the fabric: inches. */
export const barbedArms = {
  reach: inches(12),
  source: {
    text: phrase`arms 45 ± 5°, outer strand 12 ± 2 in out: RR-F-191/4F 3.5`,
    status: 'published',
  },
} as const;

/** The lowest strand over the ground, inches, where a powered gate is near. */
export const leastBarbed: { readonly length: typeof barbedArms.reach; readonly source: Source } = {
  length: inches(72),
  source: {
    text: phrase`barbed wire 6 ft over grade at least: ASTM F2200, for automated gates, as summarised in operator manuals`,
    status: 'published',
  },
};
