import { inches, sum } from '../../units/inches.ts';
import type { Opening, Term } from '../opening.ts';

/**
 * The opening that a row of terms makes, in inches. Target is the sum of the planned terms. Hinges
 * and leaves are uncertain between low and high, the latch catches anywhere between its low and
 * high: from (the rest at its largest + the smallest gap) to (the rest at its smallest + the
 * largest gap) the opening works whatever the true sizes. When holdsFrom is above holdsTo there is
 * no such opening. No terms make an opening of 0.
 */
export const openingOf = (terms: readonly Term[]): Opening => {
  const latches = terms.filter(({ role }) => role === 'latch');
  const rest = terms.filter(({ role }) => role !== 'latch');
  return {
    terms,
    target: sum(terms.map(({ planned }) => planned)),
    holdsFrom: inches(sum(rest.map(({ high }) => high)) + sum(latches.map(({ low }) => low))),
    holdsTo: inches(sum(rest.map(({ low }) => low)) + sum(latches.map(({ high }) => high))),
  };
};
