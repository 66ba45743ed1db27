import { usualCounting, type Counting } from '../../site/counting.ts';
import { emptySite } from '../../site/emptySite.ts';
import { newLineage } from '../../site/lineage.ts';
import type { Site } from '../../site/site.ts';
import { freshJob } from './freshJob.ts';

/** A site of a job of its own, with nothing drawn, that counts as the company does, or as the trade where it keeps nothing. */
export const newSite = (counting: Counting | null): Site => ({
  ...emptySite({ specs: {}, hardware: {} }),
  lineage: { ...newLineage, job: freshJob() },
  counting: counting ?? usualCounting,
});
