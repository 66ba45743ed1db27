import { isMetric } from '../../units/isMetric.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * A radius as it is told of a rough place: whole feet or metres, rounded up, at least one. A fraction of
 * an inch would promise what satellites do not keep.
 */
export const roughText = (radius: Inches, { system }: LengthStyle): string => {
  const [unit, size] = isMetric(system) ? [phrase`m`, 1 / 0.0254] : [phrase`ft`, 12];
  return `${Math.max(1, Math.ceil(radius / size - 1e-9))} ${unit}`;
};
