import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import type { FeatureId } from '../ids.ts';
import { ownMarks, withoutUnused } from '../marksInUse.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/**
 * Removes a feature, and those of its marks on which nothing else stands and that nothing keeps
 * (`withoutUnused`). RangeError for an unknown feature.
 */
export const removeFeature = (site: Site, id: FeatureId): Site =>
  withoutUnused(
    site,
    followed(withoutEntries(site, 'features', [id])),
    ownMarks(entry(site, 'features', id)),
  );
