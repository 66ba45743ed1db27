import { isMetric } from '../units/isMetric.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';

/** In what numbers of a file are read that name no unit: nobody writes land in inches or millimetres. */
export const usualUnit = (system: LengthSystem): 'feet' | 'metres' =>
  isMetric(system) ? 'metres' : 'feet';
