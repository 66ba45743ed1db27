import { checked } from '../checked.ts';
import { kept } from '../kept.ts';
import { siteSchema } from '../site.ts';
import type { Site } from '../site.ts';

/** Changes what the title block says of the job. RangeError for text that is too long. */
export const changeJob = (site: Site, fields: Partial<Site['job']>): Site => {
  const job = kept(site.job, checked(siteSchema.shape.job, { ...site.job, ...fields }, ['job']));
  return job === site.job ? site : { ...site, job };
};
