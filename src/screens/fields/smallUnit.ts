import { isMetric } from '../../units/isMetric.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';

/** The unit of a bare number in small sizes: nobody means feet when he types 2 for a gap. */
export const smallUnit = (system: LengthSystem): 'mm' | 'inches' =>
  isMetric(system) ? 'mm' : 'inches';
