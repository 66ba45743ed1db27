import type { Inches } from '../units/inches.ts';
import type { Widths } from './widths.ts';

/** A leaf of which one width is known, in inches: as if it had been measured at the top. */
export const oneWidth = (width: Inches): Widths => ({ top: width, middle: null, bottom: null });
