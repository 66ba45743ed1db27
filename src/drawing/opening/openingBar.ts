import type { Opening } from '../../engine/opening.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Atom } from '../atom.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { openingParts, partLevels } from './openingParts.ts';
import { openingRuler, rulerHeight, type Marks } from './openingRuler.ts';

/** Paper inches: how wide the bar is drawn, and the widths it shows beside the target. */
export interface BarOptions extends Marks {
  readonly width: number;
  readonly style: LengthStyle;
}

/** A drawn opening bar and the room it takes, paper inches. */
export interface OpeningBar {
  readonly atoms: readonly Atom[];
  readonly width: number;
  readonly height: number;
}

/**
 * An opening from post face to post face: what stands in it, stretched so that hinge and gap can
 * be seen, over a ruler that shows where the opening holds, the target, and how the nominal or the
 * set width compares.
 */
export const openingBar = (
  opening: Opening,
  { width, style, ...marks }: BarOptions,
): OpeningBar => ({
  atoms: [
    ...openingParts(opening, width, fineStyle(style)),
    ...moveAtoms(openingRuler(opening, fineStyle(style), { ...marks, width }), 0, partLevels.end),
  ],
  width,
  height: partLevels.end + rulerHeight,
});
