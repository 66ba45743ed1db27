import { isMetric } from './isMetric.ts';
import type { Inches } from './inches.ts';
import type { LengthStyle } from './lengthStyle.ts';

/**
 * An actual outside diameter (inches) to the thousandth of an inch or the tenth of a millimetre: a
 * tape's fractions would take 1.9 in for 1 7/8.
 */
export const pipeSize = (od: Inches, { system }: LengthStyle): string =>
  isMetric(system) ? `${(od * 25.4).toFixed(1)} mm` : `${od.toFixed(3)}"`;
