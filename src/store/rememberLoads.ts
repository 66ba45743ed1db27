import { newCarry, type Pieces } from '../engine/carry/carry.ts';
import type { Layout } from '../engine/layout.ts';
import type { Load } from '../engine/load/load.ts';
import { loadOf } from '../engine/load/loadOf.ts';
import type { Site } from '../site/site.ts';

/**
 * A load list that is worked out from the one before: what is counted and cut of the same is taken over, the very
 * same objects. The list is the same from any that was asked for before and from none.
 */
export const rememberLoads = (): ((site: Site, layout: Layout) => Load) => {
  let pieces: Pieces | undefined;
  return (site, layout) => {
    const carry = newCarry(pieces);
    const load = loadOf(site, layout, carry);
    ({ pieces } = carry);
    return load;
  };
};
