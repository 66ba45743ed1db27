import type { Inches } from '../../units/inches.ts';
import type { LengthStyle, LengthSystem } from '../../units/lengthStyle.ts';

const isMetric = (system: LengthSystem): boolean => system === 'mm' || system === 'm';

/** An actual outside diameter to the thousandth of an inch or the tenth of a millimetre. */
export const pipeSize = (od: Inches, { system }: LengthStyle): string =>
  isMetric(system) ? `${(od * 25.4).toFixed(1)} mm` : `${od.toFixed(3)}"`;

/** How short lengths such as holes are written: inches or millimetres, never feet. */
export const shortStyle = ({ system, fraction }: LengthStyle): LengthStyle => ({
  system: isMetric(system) ? 'mm' : 'inches',
  fraction,
});
