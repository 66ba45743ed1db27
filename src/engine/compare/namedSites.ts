import { alternativesOf } from '../../site/alternativesOf.ts';
import { builtAs } from '../../site/builtAs.ts';
import type { Site } from '../../site/site.ts';
import type { Named } from './candidate.ts';

/** A site as it is drawn and as each of its alternatives has it, in their order. */
export const namedSites = (site: Site): Named[] => [
  { label: '', alternative: null, site },
  ...alternativesOf(site).map(({ id, label, instead }) => ({
    label,
    alternative: id,
    site: builtAs(site, { instead }),
  })),
];
