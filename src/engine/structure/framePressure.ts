import { leastOpenFrameForce } from '../../trade/openFrames.ts';
import { gust } from '../../trade/windTerms.ts';

/**
 * Pressure on the solid area of an open frame, pounds per square foot, for the velocity pressure there and
 * its force coefficient: q G Cf, at least 16 psf (ASCE 7-16 29.4 and 29.7, as a published sheet has it).
 */
export const framePressure = (velocity: number, coefficient: number): number =>
  Math.max(velocity * gust * coefficient, leastOpenFrameForce);
