import type { Inches } from '../units/inches.ts';
import type { Widths } from './widths.ts';

/** Every width that was measured on a leaf, inches, from the top down. */
export const readWidths = ({ top, middle, bottom }: Widths): readonly Inches[] =>
  [top, middle, bottom].filter((width) => width !== null);
