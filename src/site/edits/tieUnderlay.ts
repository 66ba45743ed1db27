import type { Tie } from '../../geometry/tie.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withTies } from '../withTies.ts';

/**
 * Turns, scales and moves a picture so that two points of it lie where they are tied to; one that was
 * straightened lies as it was taken again. RangeError for one that is locked or unknown and for points on
 * one spot.
 */
export const tieUnderlay = (site: Site, id: UnderlayId, ties: readonly [Tie, Tie]): Site =>
  withTies(site, id, { ties, size: 'told' });
