import { inches, type Inches } from '../../units/inches.ts';

/** Equal bays between two posts: how many, and the length of each, centre to centre, in inches. */
export interface EqualBays {
  readonly count: number;
  readonly length: Inches;
}

/**
 * A length divided into the fewest equal bays no longer than `max` (ASTM F567-07 4.1: equidistant).
 * An exact multiple of `max` is not over-counted: the sum of its parts may be off by rounding, so
 * bays may be a billionth longer than `max`. A length of zero or less is one bay of that length,
 * and so is any length when `max` is infinite. RangeError when `max` is not above zero.
 */
export const equalBays = (length: Inches, max: Inches): EqualBays => {
  if (!(max > 0)) throw new RangeError(`largest bay: expected a length above zero, found ${max}`);
  const count = Math.max(1, Math.ceil((length / max) * (1 - 1e-9)));
  return { count, length: inches(length / count) };
};
