import { checked } from '../checked.ts';
import type { FenceSpec } from '../fenceSpec.ts';
import { specId } from '../ids.ts';
import type { SpecId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Lets a site carry a fence spec under an id; a site that has one there keeps its own. RangeError
 * for a wrong id or field.
 */
export const addSpec = (site: Site, id: SpecId, spec: FenceSpec): Site => {
  if (Object.hasOwn(site.specs, id)) return site;
  return withEntry(site, 'specs', checked(specId, id, ['specs']), spec);
};
