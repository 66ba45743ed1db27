import { inches, type Inches } from '../../units/inches.ts';
import type { PoleGround } from './poleFooting.ts';

/**
 * The depth of a pole that nothing holds at the ground and on which no force but a moment acts, inch-pounds:
 * inches. Derived from IBC 1807.3.2.1 as the push goes to nothing at a height that goes up with it:
 * d² = 1.09 × 2.34 M ÷ (S₁ b), S₁ at a third of the depth and no more below 12 ft; feet and pounds.
 */
export const momentDepth = (moment: number, { width, lateral }: PoleGround): Inches => {
  if (!(moment >= 0)) throw new RangeError(`moment of ${moment} in-lb: expected 0 or more`);
  if (!(width > 0 && lateral > 0)) {
    throw new RangeError(`footing of ${width} in, ${lateral} psf per ft: expected above 0`);
  }
  // ¼ × 4.36 × 2.34
  const each = (1.09 * 2.34 * (moment / 12)) / (lateral * (width / 12));
  const depth = Math.cbrt(3 * each);
  return inches(12 * (depth / 3 <= 12 ? depth : Math.sqrt(each / 12)));
};
