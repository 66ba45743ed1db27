import type { SitePoint } from '../../geometry/point.ts';
import type { FeatureId } from '../ids.ts';
import { marksMoved } from '../marksMoved.ts';
import type { Site } from '../site.ts';
import { moveMarks } from './moveMarks.ts';

/**
 * Moves a feature by a vector in inches, with all that stands on its marks; ground with a height limit by the
 * marks that are its alone. RangeError for an
 * unknown feature and for a move beyond ten miles.
 */
export const moveFeature = (site: Site, id: FeatureId, by: SitePoint): Site =>
  moveMarks(site, marksMoved(site, id), by);
