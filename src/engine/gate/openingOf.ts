import { inches, sum } from '../../units/inches.ts';
import type { Opening, Term } from '../opening.ts';

const total = (terms: readonly Term[], end: 'low' | 'planned' | 'high'): number =>
  sum(terms.map((term) => term[end]));

/**
 * The opening that a row of terms makes, in inches. Target is the sum of the planned terms. Latch
 * and adjustable terms can be anywhere between their low and high; uncertain ones are somewhere
 * there. For sure it works from (uncertain terms at their largest, the others at their smallest)
 * to (uncertain at their smallest, the others at their largest); possible is the wider interval
 * with the uncertain ends exchanged. When holdsFrom is above holdsTo no opening is sure to work.
 * No terms make an opening of 0. The root of the sum of squares: common practice of tolerance
 * stack-ups, from memory.
 */
export const openingOf = (terms: readonly Term[]): Opening => {
  const unsure = terms.filter(({ spread }) => spread === 'uncertain');
  const free = terms.filter(({ spread }) => spread !== 'uncertain');
  const [least, most] = [total(unsure, 'low'), total(unsure, 'high')];
  const [from, to] = [total(free, 'low'), total(free, 'high')];
  const middle = (least + most) / 2;
  const usual = Math.hypot(...unsure.map(({ low, high }) => (high - low) / 2));
  return {
    terms,
    target: inches(total(terms, 'planned')),
    holdsFrom: inches(most + from),
    holdsTo: inches(least + to),
    mayFrom: inches(least + from),
    mayTo: inches(most + to),
    likelyFrom: inches(middle + usual + from),
    likelyTo: inches(middle - usual + to),
  };
};
