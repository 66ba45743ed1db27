import type { Tie } from '../geometry/tie.ts';
import { entry } from './entry.ts';
import type { TieId, UnderlayId } from './ids.ts';
import { nextIds } from './nextId.ts';
import type { Site } from './site.ts';
import type { Underlay } from './underlay.ts';
import { withUnderlay } from './withUnderlay.ts';
import { phrase } from '../phrases/phrase.ts';

/** An underlay that can be laid elsewhere. RangeError for one that is not there and for one that is locked. */
export const looseUnderlay = (site: Site, id: UnderlayId): Underlay => {
  const underlay = entry(site, 'underlays', id);
  if (!underlay.locked) return underlay;
  throw new RangeError(phrase`underlays › ${id}: expected a picture that is not locked`);
};

/**
 * A site in which a picture lies by other ties; they take the ids that it has before new ones. RangeError
 * for a picture that is locked and for ties that do not say where it lies.
 */
export const withTies = (
  site: Site,
  id: UnderlayId,
  { ties, size }: { readonly ties: readonly Tie[]; readonly size: Underlay['size'] },
): Site => {
  const underlay = looseUnderlay(site, id);
  const own = Object.keys(underlay.ties) as TieId[];
  const ids = [...own, ...nextIds(site, 'tie', ties.length)];
  const tied = ties.map(({ u, v, x, y }, n) => [ids[n] ?? `tie:${n}`, { u, v, x, y }] as const);
  return withUnderlay(site, id, { ...underlay, ties: Object.fromEntries(tied), size });
};
