import type { PriceList } from '../../site/priceList.ts';
import type { Candidate } from './candidate.ts';
import { comparedOf, type Compared } from './compared.ts';
import { comparedLines, type ComparedLine } from './comparedLines.ts';
import { differenceOf, type Difference } from './difference.ts';

/** Yards side by side. The first is what the others are compared with. */
export interface Comparison {
  readonly columns: readonly (Compared & {
    /** What it has more than the first; null of the first itself. */
    readonly more: Difference | null;
  })[];
  /** The lines of their load lists of which some have another number than the first. */
  readonly lines: readonly ComparedLine[];
}

/** Counts that differ by less are one count: lengths of a sum in binary fractions. */
const least = 1e-6;

const differs = ({ counts: [first = 0, ...others] }: ComparedLine): boolean =>
  others.some((count) => Math.abs(count - first) > least);

/**
 * Yards compared with the first of them: figures, load lists line by line, and by a price list, null for
 * none, what each comes to. No yards give no columns.
 */
export const comparisonOf = (
  candidates: readonly Candidate[],
  list: PriceList | null,
): Comparison => {
  const compared = candidates.map((one) => comparedOf(one, list));
  const [first] = compared;
  const columns = compared.map((one, n) => ({
    ...one,
    more: first === undefined || n === 0 ? null : differenceOf(one, first),
  }));
  const lines = comparedLines(candidates.map(({ load }) => load)).filter(differs);
  return { columns, lines };
};
