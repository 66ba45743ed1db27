import { bestTogether } from './bestTogether.ts';
import type { Label } from './label.ts';
import type { Lettering } from './lettering.ts';

/** A name had better stand anywhere else than on a line. */
const costOfCovering = 12;

function* alone(labels: Iterable<Label>): Generator<readonly [Label]> {
  for (const label of labels) yield [label];
}

/**
 * The best free place of a list for one label, most wished for first; null where none is free.
 * The room is not taken.
 */
export const bestOf = (
  room: Pick<Lettering, 'isFree' | 'covers'>,
  places: Iterable<Label>,
): Label | null => bestTogether(room, alone(places), costOfCovering)?.[0] ?? null;
