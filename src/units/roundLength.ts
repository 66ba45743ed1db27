import { inches, type Inches } from './inches.ts';
import { lengthSteps } from './lengthSteps.ts';
import type { LengthStyle } from './lengthStyle.ts';

/** So many of the finest that a style writes, in inches, computed as a reader of the text would. */
const stepsLong = (steps: number, { system, fraction }: LengthStyle): Inches => {
  switch (system) {
    case 'feet':
    case 'inches':
      return inches(steps / fraction);
    case 'decimal feet':
      return inches((steps / 100) * 12);
    case 'mm':
    case 'm':
      return inches((steps * 10) / 254);
  }
};

/** The finest length that a style writes, in inches: the fraction, 0.01 ft, or 1 mm. */
export const finest = (style: LengthStyle): Inches => stepsLong(1, style);

/**
 * A finite length rounded to the finest that a style writes, half away from zero: to the last bit
 * what is read back from `formatLength`. Never negative zero.
 */
export const roundLength = (value: Inches, style: LengthStyle): Inches =>
  stepsLong(lengthSteps(value, style), style);
