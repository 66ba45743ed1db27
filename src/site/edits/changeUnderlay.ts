import { entry } from '../entry.ts';
import type { UnderlayId } from '../ids.ts';
import type { Site } from '../site.ts';
import type { Underlay } from '../underlay.ts';
import { withUnderlay } from '../withUnderlay.ts';

/**
 * Changes what a picture under the drawing is called, how much of it shows and whether it is locked.
 * RangeError for an unknown one and for a share that is not from 0 to 1.
 */
export const changeUnderlay = (
  site: Site,
  id: UnderlayId,
  change: Partial<Pick<Underlay, 'label' | 'shows' | 'locked'>>,
): Site => withUnderlay(site, id, { ...entry(site, 'underlays', id), ...change });
