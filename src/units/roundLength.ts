import type { Inches } from './inches.ts';
import { lengthOfSteps } from './lengthOfSteps.ts';
import { lengthSteps } from './lengthSteps.ts';
import type { LengthStyle } from './lengthStyle.ts';

/**
 * A finite length rounded to the finest that a style writes, half away from zero: to the last bit
 * what is read back from `formatLength`. Never negative zero.
 */
export const roundLength = (value: Inches, style: LengthStyle): Inches =>
  lengthOfSteps(lengthSteps(value, style), style);
