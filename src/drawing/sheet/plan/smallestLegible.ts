import { isMetric } from '../../../units/isMetric.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';

/**
 * Ground inches to an inch of paper from which on bays of 10 ft (3 m) have no room for their lengths: a
 * plan is drawn no smaller than 1 in = 20 ft or 1 : 200 where each is to be read. Ours.
 */
export const smallestLegible = (system: LengthSystem): number => (isMetric(system) ? 200 : 240);
