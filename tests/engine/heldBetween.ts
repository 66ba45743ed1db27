import type { Opening } from '../../src/engine/opening.ts';
import { inches } from '../../src/units/inches.ts';

/** An opening of no terms that holds between two widths, in inches, and nowhere else. */
export const heldBetween = (from: number, to: number, target = from): Opening => ({
  terms: [],
  target: inches(target),
  holdsFrom: inches(from),
  holdsTo: inches(to),
  mayFrom: inches(from),
  mayTo: inches(to),
  likelyFrom: inches(from),
  likelyTo: inches(to),
});
