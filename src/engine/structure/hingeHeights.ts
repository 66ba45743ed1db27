import { hingeInset } from '../../trade/hingeInset.ts';
import { inches, type Inches } from '../../units/inches.ts';

/** How high the two hinges of a leaf are over the ground, inches. */
export interface HingeHeights {
  readonly lowHinge: Inches;
  readonly highHinge: Inches;
}

/**
 * How high the hinges of a leaf are taken to be, by how high its bottom hangs over the ground and how high
 * it is itself, inches: near its ends, nearer on a low leaf.
 */
export const hingeHeights = (bottom: number, height: number): HingeHeights => {
  const inset = Math.min(hingeInset.length, height / 4);
  return { lowHinge: inches(bottom + inset), highHinge: inches(bottom + height - inset) };
};
