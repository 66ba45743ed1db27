import type { Inches } from './inches.ts';
import type { LengthStyle } from './lengthStyle.ts';

/** A length in the finest that a style writes, not rounded. Whole ratios keep exact halves exact. */
const finestIn = (value: Inches, { system, fraction }: LengthStyle): number => {
  switch (system) {
    case 'feet':
    case 'inches':
      return value * fraction;
    case 'decimal feet':
      return (value * 25) / 3;
    case 'mm':
    case 'm':
      return (value * 127) / 5;
  }
};

/**
 * How many of the finest that a style writes (a fraction of an inch, 0.01 ft, 1 mm) a finite
 * length in inches comes to: whole, half away from zero, never negative zero.
 */
export const lengthSteps = (value: Inches, style: LengthStyle): number => {
  const exact = Math.abs(finestIn(value, style));
  // a few last bits are forgiven: 120.5 mm is stored a hair under its half
  const whole = Math.round(exact * (1 + 2 ** -50));
  return whole === 0 ? 0 : Math.sign(value) * whole;
};
