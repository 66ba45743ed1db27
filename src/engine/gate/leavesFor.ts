import { inches, type Inches } from '../../units/inches.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A wanted opening turned round into leaves to order, in inches. */
export interface LeafOrder {
  /** Each of the equal leaves, rounded down to the step. */
  readonly leaf: Inches;
  /** The opening worked out again from the rounded leaves. */
  readonly opening: Inches;
}

/**
 * Equal leaves that go into a wanted or already set opening: what is left after `taken` (every
 * hinge and the planned latch gap), divided by the number of leaves, rounded down to the shop's
 * step (a billionth under a step is rounding, not a smaller leaf). All in inches. RangeError when
 * nothing is left for a leaf or an argument makes no sense.
 */
export const leavesFor = (want: Inches, taken: Inches, count: number, step: Inches): LeafOrder => {
  if (!Number.isInteger(count) || count < 1) {
    throw new RangeError(phrase`leaves: expected a whole number of at least 1, found ${count}`);
  }
  if (!(step > 0))
    throw new RangeError(phrase`step: expected a length above zero, found ${step} in`);
  const leaf = Math.floor(((want - taken) / count / step) * (1 + 1e-9)) * step;
  if (!(leaf > 0)) {
    throw new RangeError(
      phrase`opening of ${want} in: expected more than the ${taken} in taken up`,
    );
  }
  return { leaf: inches(leaf), opening: inches(leaf * count + taken) };
};
