import { boundsOverlap, expandBounds, type Bounds } from '../geometry/bounds.ts';

/** Letters and chains stand no farther off what they are of, paper inches. */
export const mostBeside = 1;

/**
 * Whether anything of what reaches so far on the paper (`primitiveBounds`, inches) may be in a window, its letters
 * and chains too; a window of null is all the paper, and what reaches nowhere is in none.
 */
export const isNear = (reach: Bounds | null, window: Bounds | null): boolean =>
  reach !== null && (window === null || boundsOverlap(window, expandBounds(reach, mostBeside)));
