import { tiesFault } from '../geometry/tiesFault.ts';
import type { UnderlayId } from './ids.ts';
import type { Site } from './site.ts';
import { tiesOf } from './tiesOf.ts';
import type { Underlay } from './underlay.ts';
import { withEntry } from './withEntries.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * A site with an underlay added or exchanged. RangeError with one line when it does not fit the document
 * or its ties do not say where it lies.
 */
export const withUnderlay = (site: Site, id: UnderlayId, underlay: Underlay): Site => {
  const fault = tiesFault(tiesOf(underlay));
  if (fault !== null) throw new RangeError(phrase`underlays › ${id} › ties: ${fault}`);
  return withEntry(site, 'underlays', id, underlay);
};
