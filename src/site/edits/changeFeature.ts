import { checked } from '../checked.ts';
import { entry } from '../entry.ts';
import { featureSchema } from '../feature.ts';
import type { FeatureChange } from '../feature.ts';
import type { FeatureId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Changes fields of a feature, lengths in inches; its kind and its marks stay. RangeError for an
 * unknown feature and for a field that its kind does not have.
 */
export const changeFeature = (site: Site, id: FeatureId, fields: FeatureChange): Site => {
  const changed = { ...entry(site, 'features', id), ...fields };
  return withEntry(site, 'features', id, checked(featureSchema, changed, ['features', id]));
};
