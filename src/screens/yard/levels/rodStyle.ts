import { isMetric } from '../../../units/isMetric.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';

/** How a level rod is read on a site of this style: in hundredths of a foot, or in metres. */
export const rodStyle = ({ system, fraction }: LengthStyle): LengthStyle => ({
  system: isMetric(system) ? 'm' : 'decimal feet',
  fraction,
});
