import { isMetric } from '../../units/isMetric.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The finest that a style writes, inches; errors are told in it, never as nothing. */
const finest = ({ system, fraction }: LengthStyle): number => {
  if (isMetric(system)) return 1 / 25.4;
  return system === 'decimal feet' ? 0.12 : 1 / fraction;
};

/**
 * How well the place of an opening on the ground is known, in one line: one standard deviation, rounded
 * up to what the style writes.
 */
export const placeText = (error: Inches, style: LengthStyle): string => {
  const step = finest(style);
  const most = inches(Math.max(1, Math.ceil(error / step - 1e-9)) * step);
  return phrase`Its place on the ground is known to ±${formatLength(most, style)} by the tapes`;
};
