import { inches, type Inches } from '../../units/inches.ts';

/**
 * The level length of a tape of some length held on a slope whose ends differ by a rise; inches.
 * Exact, where field tables use the first term of the series, rise² ÷ (2 × length). 0 for a rise of
 * the tape's length or more.
 */
export const planLength = (tape: Inches, rise: Inches): Inches =>
  inches(Math.sqrt(Math.max(0, (tape - rise) * (tape + rise))));
