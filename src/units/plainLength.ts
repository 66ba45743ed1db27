import { isMetric } from './isMetric.ts';
import type { Inches } from './inches.ts';
import type { LengthSystem } from './lengthStyle.ts';

/** Inches of 25.4 mm to a metre. */
const metre = 1000 / 25.4;

const inFeet = (whole: number): string => {
  const [feet, rest] = [Math.floor(whole / 12), whole % 12];
  if (feet === 0) return `${rest} in`;
  return rest === 0 ? `${feet} ft` : `${feet} ft ${rest} in`;
};

/**
 * A length of zero or more as it is told to somebody who builds nothing by it: `12 ft 6 in`, to the inch, or
 * `14.78 m`, to the centimetre, without zeros at the end. What is below zero is told as its size.
 */
export const plainLength = (value: Inches, system: LengthSystem): string => {
  const size = Math.abs(value);
  if (isMetric(system)) return `${Number((size / metre).toFixed(2))} m`;
  return inFeet(Math.round(size));
};
