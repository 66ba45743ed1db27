import { slack } from '../../geometry/tolerance.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import type { Opening, Term } from '../opening.ts';

/** What is left for the latch when the posts stand at a width, in inches, and whether it catches. */
export interface Gap {
  /** With every hinge and leaf at its planned size; negative when the leaves do not go in. */
  readonly planned: Inches;
  /** With hinges and leaves at their largest and at their smallest. */
  readonly least: Inches;
  readonly most: Inches;
  /**
   * `holds` whatever the hinges' true size; `may hold`: it depends on it, measure the hinges;
   * `too narrow` or `too wide` whatever it is. Compared with the latch's catch range.
   */
  readonly verdict: 'holds' | 'may hold' | 'too narrow' | 'too wide';
  /** How much too narrow or too wide for certain; 0 when it may hold. */
  readonly by: Inches;
}

const total = (terms: readonly Term[], end: 'low' | 'planned' | 'high'): number =>
  sum(terms.map((term) => term[end]));

/** The gap that an opening leaves for its latch when the posts are set `width` inches apart. */
export const gapAt = (opening: Opening, width: Inches): Gap => {
  const latches = opening.terms.filter(({ role }) => role === 'latch');
  const rest = opening.terms.filter(({ role }) => role !== 'latch');
  const [low, high] = [total(latches, 'low'), total(latches, 'high')];
  const [least, most] = [width - total(rest, 'high'), width - total(rest, 'low')];
  const gap = {
    planned: inches(width - total(rest, 'planned')),
    least: inches(least),
    most: inches(most),
  };
  // sums of metric parts are off by rounding; a millionth of an inch decides nothing
  if (most < low - slack) return { ...gap, verdict: 'too narrow', by: inches(low - most) };
  if (least > high + slack) return { ...gap, verdict: 'too wide', by: inches(least - high) };
  const sure = least >= low - slack && most <= high + slack;
  return { ...gap, verdict: sure ? 'holds' : 'may hold', by: inches(0) };
};
