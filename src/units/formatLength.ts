import type { Inches } from './inches.ts';
import type { LengthStyle } from './lengthStyle.ts';
import { roundLength } from './roundLength.ts';

const fractionText = (numerator: number, denominator: number): string => {
  let [top, bottom] = [numerator, denominator];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
};

/** Inches of zero or more, already rounded to the fraction, as `10 1/2`. */
const inchText = (value: number, fraction: number): string => {
  const whole = Math.floor(value);
  const parts = Math.round((value - whole) * fraction);
  if (parts === 0) return `${whole}`;
  const tail = fractionText(parts, fraction);
  return whole === 0 ? tail : `${whole} ${tail}`;
};

const feetText = (value: number, fraction: number): string => {
  const feet = Math.floor(value / 12);
  const rest = `${inchText(value - feet * 12, fraction)}"`;
  return feet === 0 ? rest : `${feet}'-${rest}`;
};

/**
 * A length as it is written on a tape or a sheet: `9'-10 1/2"`, `118 1/2"`, `9.88'`, `3005 mm` or
 * `3.005 m`. Rounded once, half away from zero; a negative length has a leading minus, zero none.
 */
export const formatLength = (value: Inches, style: LengthStyle): string => {
  const rounded = roundLength(value, style);
  const size = Math.abs(rounded);
  const sign = rounded < 0 ? '-' : '';
  switch (style.system) {
    case 'feet':
      return `${sign}${feetText(size, style.fraction)}`;
    case 'inches':
      return `${sign}${inchText(size, style.fraction)}"`;
    case 'decimal feet':
      return `${sign}${(size / 12).toFixed(2)}'`;
    case 'mm':
      return `${sign}${(size * 25.4).toFixed(0)} mm`;
    case 'm':
      return `${sign}${(size * 0.0254).toFixed(3)} m`;
  }
};
