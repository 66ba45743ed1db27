import type { Bounds } from '../../geometry/bounds.ts';
import { boundsIndex, foundIn } from '../../geometry/boundsIndex.ts';
import { remembered } from './remembered.ts';
import { squareAbout, type About } from './squareAbout.ts';

/**
 * Asks for what may be within reach of a place, in the order in which a whole has it: an index is made
 * once for each whole. All that is within reach is found, and some of what is not.
 */
export const nearOf = <Whole extends object, T>(
  all: (whole: Whole) => readonly T[],
  boundsOf: (one: T) => Bounds | null,
): ((whole: Whole, about: About) => T[]) => {
  const indexOf = remembered((whole: Whole) => boundsIndex(all(whole), boundsOf));
  return (whole, about) => foundIn(indexOf(whole), squareAbout(about));
};
