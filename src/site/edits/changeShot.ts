import { entry } from '../entry.ts';
import type { ShotId } from '../ids.ts';
import type { Shot } from '../shot.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Moves a grade shot, or gives it another height or name. RangeError for an unknown shot. */
export const changeShot = (site: Site, id: ShotId, change: Partial<Shot>): Site =>
  withEntry(site, 'shots', id, { ...entry(site, 'shots', id), ...change });
