import type { Alternative } from '../../../site/alternative.ts';
import type { SpecId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { plannedBuilds } from './plannedBuilds.ts';

/** The builds that an alternative replaces though no line has them now. */
export const idleBuilds = (
  site: Pick<Site, 'lines'>,
  { instead }: Pick<Alternative, 'instead'>,
): SpecId[] => {
  const planned = new Set(plannedBuilds(site));
  return (Object.keys(instead) as SpecId[]).filter((id) => !planned.has(id));
};
