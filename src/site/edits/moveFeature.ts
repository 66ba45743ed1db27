import type { SitePoint } from '../../geometry/point.ts';
import { entry } from '../entry.ts';
import type { FeatureId } from '../ids.ts';
import { ownMarks } from '../marksInUse.ts';
import type { Site } from '../site.ts';
import { moveMarks } from './moveMarks.ts';

/**
 * Moves a feature by a vector in inches, with all that stands on its marks. RangeError for an
 * unknown feature and for a move beyond ten miles.
 */
export const moveFeature = (site: Site, id: FeatureId, by: SitePoint): Site =>
  moveMarks(site, ownMarks(entry(site, 'features', id)), by);
