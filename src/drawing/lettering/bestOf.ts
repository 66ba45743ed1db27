import type { Label } from './label.ts';
import type { Lettering } from './lettering.ts';

/** Lying on a drawn thing is as bad as being this many places down the list. */
const costOfCovering = 3;

/**
 * The best free place of a list that begins with the most wished for: near the front and over as
 * few drawn things as can be. Null where none is free. The room is not taken.
 */
export const bestOf = (
  room: Pick<Lettering, 'isFree' | 'covers'>,
  places: Iterable<Label>,
): Label | null => {
  let best: { readonly label: Label; readonly cost: number } | null = null;
  let wish = 0;
  for (const label of places) {
    if (best !== null && wish >= best.cost) break;
    if (room.isFree(label.box)) {
      const cost = wish + costOfCovering * room.covers(label.box);
      if (best === null || cost < best.cost) best = { label, cost };
    }
    wish += 1;
  }
  return best?.label ?? null;
};
