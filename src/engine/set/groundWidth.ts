import type { AsSet } from '../../site/asSet.ts';
import type { Inches } from '../../units/inches.ts';

/**
 * How far apart the inside faces of two posts stand where they come out of the ground, in inches:
 * as measured at the bottom, at the top where nobody measured there.
 */
export const groundWidth = ({ top, bottom }: Pick<AsSet, 'top' | 'bottom'>): Inches =>
  bottom ?? top;
