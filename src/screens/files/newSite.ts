import { usualCounting, type Counting } from '../../site/counting.ts';
import { emptySite } from '../../site/emptySite.ts';
import type { Site } from '../../site/site.ts';

/** A site with nothing drawn that counts as the company does, or as the trade where it keeps nothing. */
export const newSite = (counting: Counting | null): Site => ({
  ...emptySite({ specs: {}, hardware: {} }),
  counting: counting ?? usualCounting,
});
