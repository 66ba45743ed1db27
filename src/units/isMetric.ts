import type { LengthSystem } from './lengthStyle.ts';

/** Whether lengths are written in millimetres or metres. */
export const isMetric = (system: LengthSystem): boolean => system === 'mm' || system === 'm';
