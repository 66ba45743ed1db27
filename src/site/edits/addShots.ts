import { nextIds } from '../nextId.ts';
import type { Shot } from '../shot.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/**
 * Adds grade shots (inches, z up) under `nextIds(site, 'shot', …)`. RangeError with one line for a
 * coordinate or height that the document cannot hold.
 */
export const addShots = (site: Site, shots: readonly Shot[]): Site => {
  const ids = nextIds(site, 'shot', shots.length);
  return withEntries(
    site,
    'shots',
    Object.fromEntries(shots.map((shot, n) => [ids[n] ?? '', shot])),
  );
};
