import type { Site } from '../site.ts';
import { unlinedText } from '../unlinedText.ts';
import { freshIds } from './freshIds.ts';
import { partsOf } from './partsOf.ts';
import { renamedSite } from './renamedSite.ts';
import { sameWay, type Copies } from './sameWay.ts';

/** Two copies told alike, and which of them was mine. */
export interface Aligned extends Copies {
  readonly firstIs: 'mine' | 'theirs';
}

const none: ReadonlySet<string> = new Set();

/** The copy whose file comes first by its text is the first one, so that it does not matter who merges. */
const sorted = (base: Site | null, mine: Site, theirs: Site): Aligned =>
  unlinedText(mine) <= unlinedText(theirs)
    ? { base, first: mine, second: theirs, firstIs: 'mine' }
    : { base, first: theirs, second: mine, firstIs: 'theirs' };

/**
 * Two copies of one document told alike: lines run the same way in both, and one id means one thing. What one
 * of them called by an id of the other's has a fresh one, the smallest number that nobody uses; which copy
 * that is hangs on the text of both and not on who merges.
 */
export const aligned = (base: Site | null, mine: Site, theirs: Site): Aligned => {
  const copies = sorted(base, mine, theirs);
  const told = sameWay(copies);
  if (told.base === null) return { ...told, firstIs: copies.firstIs };
  const fresh = freshIds({
    base: partsOf(told.base, none),
    first: partsOf(told.first, none),
    second: partsOf(told.second, none),
  });
  return { ...told, second: renamedSite(told.second, fresh), firstIs: copies.firstIs };
};
