import { inches, type Inches } from '../../units/inches.ts';

/**
 * Half of the last figure of a distance on a plat, 0.01 ft: what is less is nothing that calls could
 * say. Ours, no published source.
 */
export const finestReading: Inches = inches(0.06);
