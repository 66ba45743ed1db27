import { isMetric } from '../../units/isMetric.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/** How short lengths such as holes are written: inches or millimetres, never feet. */
export const shortStyle = ({ system, fraction }: LengthStyle): LengthStyle => ({
  system: isMetric(system) ? 'mm' : 'inches',
  fraction,
});
