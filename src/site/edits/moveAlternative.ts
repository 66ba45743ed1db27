import { alternativesOf } from '../alternativesOf.ts';
import { entry } from '../entry.ts';
import type { AlternativeId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/**
 * Moves an alternative before the one before it, or behind the one behind it: the two exchange their order
 * keys. The same site where there is none. RangeError for an unknown alternative.
 */
export const moveAlternative = (site: Site, id: AlternativeId, to: 'before' | 'behind'): Site => {
  const moved = entry(site, 'alternatives', id);
  const all = alternativesOf(site);
  const place = all.findIndex((one) => one.id === id) + (to === 'before' ? -1 : 1);
  const other = all[place];
  if (other === undefined) return site;
  const { id: otherId, ...rest } = other;
  return withEntries(site, 'alternatives', {
    [id]: { ...moved, order: other.order },
    [otherId]: { ...rest, order: moved.order },
  });
};
