import type { Inches } from '../units/inches.ts';
import type { Leaf } from './gate.ts';
import { readWidths } from './readWidths.ts';

/** The width of a leaf that governs, in inches: the largest measured, for that has to go in. */
export const leafWidth = ({ widths }: Pick<Leaf, 'widths'>): Inches =>
  readWidths(widths).reduce((most, width) => (width > most ? width : most), widths.top);
