import type { FenceLine } from '../../../site/fenceLine.ts';
import type { SpecId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';

/** The builds that fence lines of a site have, in the order of the lines, each once. */
export const plannedBuilds = ({ lines }: Pick<Site, 'lines'>): SpecId[] => [
  ...new Set(Object.values<FenceLine>(lines).map(({ spec }) => spec)),
];
