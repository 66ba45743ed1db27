import type { Label } from './label.ts';
import type { Lettering } from './lettering.ts';

/**
 * The best free place of a list that begins with the most wished for: near the front and over as
 * few drawn things as can be: lying on one is as bad as being `costOfCovering` places down the list.
 * A place is one label or several that keep together. Null where none is free. The room is not
 * taken.
 */
export const bestTogether = <Place extends readonly Pick<Label, 'box'>[]>(
  room: Pick<Lettering, 'isFree' | 'covers'>,
  places: Iterable<Place>,
  costOfCovering: number,
): Place | null => {
  let best: { readonly place: Place; readonly cost: number } | null = null;
  let wish = 0;
  for (const place of places) {
    if (best !== null && wish >= best.cost) break;
    if (place.every(({ box }) => room.isFree(box))) {
      const covered = place.reduce((sum, { box }) => sum + room.covers(box), 0);
      const cost = wish + costOfCovering * covered;
      if (best === null || cost < best.cost) best = { place, cost };
    }
    wish += 1;
  }
  return best?.place ?? null;
};
