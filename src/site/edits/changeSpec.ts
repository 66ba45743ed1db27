import { entry } from '../entry.ts';
import type { FenceSpec } from '../fenceSpec.ts';
import type { SpecId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Changes fields of a fence spec, for every line that is built to it; lengths in inches, the angle
 * in radians. RangeError for an unknown spec and a wrong field.
 */
export const changeSpec = (site: Site, id: SpecId, fields: Partial<FenceSpec>): Site =>
  withEntry(site, 'specs', id, { ...entry(site, 'specs', id), ...fields });
