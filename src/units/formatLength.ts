import type { Inches } from './inches.ts';
import { lengthSteps } from './lengthSteps.ts';
import type { LengthStyle } from './lengthStyle.ts';

const fractionText = (numerator: number, denominator: number): string => {
  let [top, bottom] = [numerator, denominator];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
};

/** So many fractions of an inch, zero or more, as `10 1/2`. */
const inchText = (steps: number, fraction: number): string => {
  const whole = Math.floor(steps / fraction);
  const parts = steps % fraction;
  if (parts === 0) return `${whole}`;
  const tail = fractionText(parts, fraction);
  return whole === 0 ? tail : `${whole} ${tail}`;
};

const feetText = (steps: number, fraction: number): string => {
  const foot = 12 * fraction;
  const [feet, over] = [Math.floor(steps / foot), steps % foot];
  const rest = `${inchText(over, fraction)}"`;
  if (feet === 0) return rest;
  // 9'-1/4" is too easily read as nine feet, one, four
  return over > 0 && over < fraction ? `${feet}'-0 ${rest}` : `${feet}'-${rest}`;
};

/** So many of the finest that a style writes, zero or more. */
const stepsText = (steps: number, { system, fraction }: LengthStyle): string => {
  switch (system) {
    case 'feet':
      return feetText(steps, fraction);
    case 'inches':
      return `${inchText(steps, fraction)}"`;
    case 'decimal feet':
      return `${(steps / 100).toFixed(2)}'`;
    case 'mm':
      return `${steps} mm`;
    case 'm':
      return `${(steps / 1000).toFixed(3)} m`;
  }
};

/**
 * A finite length as it is written on a tape or a sheet: `9'-10 1/2"`, `118 1/2"`, `9.88'`,
 * `3005 mm` or `3.005 m`; under a foot without feet. Rounded once, half away from zero, carrying
 * into inches and feet; a negative length has a leading minus, zero none.
 */
export const formatLength = (value: Inches, style: LengthStyle): string => {
  const steps = lengthSteps(value, style);
  return `${steps < 0 ? '-' : ''}${stepsText(Math.abs(steps), style)}`;
};
