import { inches, type Inches } from './inches.ts';
import type { LengthStyle } from './lengthStyle.ts';

/** The finest length that a style writes, in inches: the fraction, 0.01 ft, 1 mm either way. */
export const finest = ({ system, fraction }: LengthStyle): Inches => {
  switch (system) {
    case 'feet':
    case 'inches':
      return inches(1 / fraction);
    case 'decimal feet':
      return inches(0.12);
    case 'mm':
    case 'm':
      return inches(1 / 25.4);
  }
};

/**
 * A length rounded to the finest that a style writes, half away from zero. Exact for fractions of
 * an inch. Never negative zero.
 */
export const roundLength = (value: Inches, style: LengthStyle): Inches => {
  const step = finest(style);
  const steps = Math.round(Math.abs(value) / step);
  return inches(steps === 0 ? 0 : Math.sign(value) * steps * step);
};
