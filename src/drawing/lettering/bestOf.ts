import { cheapest } from './cheapest.ts';
import type { Label } from './label.ts';
import { usualCost, weigh } from './coverCost.ts';
import type { Lettering } from './lettering.ts';

/**
 * The best free place of a list for one label, most wished for first; null where none is free.
 * The room is not taken.
 */
export const bestOf = (
  room: Pick<Lettering, 'isFree' | 'covers'>,
  places: Iterable<Label>,
): Label | null =>
  cheapest(places, ({ box }, limit) =>
    room.isFree(box) ? weigh(room.covers(box, { cost: usualCost, limit }), usualCost) : null,
  );
