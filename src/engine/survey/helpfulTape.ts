import type { MarkId } from '../../site/ids.ts';
import type { Trusts } from '../../site/trusts.ts';
import { candidatesAmong, fieldOf } from './candidate.ts';
import { checkingTape } from './checkingTape.ts';
import type { Held } from './held.ts';
import { holdingTape } from './holdingTape.ts';
import type { Places } from './rows.ts';

/**
 * The one tape between two of these marks that would help most: that which holds the most marks to the
 * rest; where all hang together, that which helps the mark that is known worst, or else the reading
 * that is checked least. Null where none would help.
 */
export const helpfulTape = (
  held: Held,
  places: Places,
  trusts: Trusts,
): { readonly from: MarkId; readonly to: MarkId } | null => {
  const sightings = held.parts.flatMap(({ network }) => network.sightings);
  const field = fieldOf(places, sightings, trusts);
  const hangs = held.loose.every(({ mark }) => held.body?.marks.has(mark) === true);
  const found = hangs
    ? checkingTape(held, places, field)
    : holdingTape(held, places, candidatesAmong(field));
  return found === null ? null : { from: found.from, to: found.to };
};
