import type { FourTies } from '../../geometry/homographyOf.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withTies } from '../withTies.ts';

/**
 * Straightens a picture that was taken at an angle by four points of it and where they lie on the ground.
 * RangeError for one that is locked or unknown, for points on one spot or three in a row, and for an order
 * in which no camera sees them.
 */
export const straightenUnderlay = (site: Site, id: UnderlayId, ties: FourTies): Site =>
  withTies(site, id, { ties, size: 'told' });
