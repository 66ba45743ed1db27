import type { FenceLine } from './fenceLine.ts';
import { newLineage } from './lineage.ts';
import { saveSite } from './saveSite.ts';
import type { Site } from './site.ts';

/** The builds that some fence line has. */
const builtSpecs = ({ lines, specs }: Site): Site['specs'] => {
  const built = new Set<string>(Object.values<FenceLine>(lines).map(({ spec }) => spec));
  return Object.fromEntries(Object.entries(specs).filter(([id]) => built.has(id)));
};

/**
 * The text of all of a site that a sheet shows: as `saveSite` has it without the pictures under the
 * drawing, without where it comes from, its alternatives and without builds that no line has, so that two prints of one yard have
 * one check value whatever lies under it on the pad and however else it might be built.
 */
export const sheetText = (site: Site): string =>
  saveSite({
    ...site,
    lineage: newLineage,
    alternatives: {},
    specs: builtSpecs(site),
    underlays: {},
    pictures: {},
  });
