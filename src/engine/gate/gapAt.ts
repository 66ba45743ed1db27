import { slack } from '../../geometry/tolerance.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import type { Opening, Term } from '../opening.ts';

/** What is left for the latch when the posts stand at a width, in inches, and whether it catches. */
export interface Gap {
  /** With every hinge and leaf at its planned size; negative when the leaves do not go in. */
  readonly planned: Inches;
  /** With what is uncertain at its largest and at its smallest, the rest as planned. */
  readonly least: Inches;
  readonly most: Inches;
  /**
   * `holds` whatever the true sizes; `may hold`: it depends on them, measure what is uncertain;
   * `too narrow` or `too wide` whatever they are, with what can be adjusted adjusted.
   */
  readonly verdict: 'holds' | 'may hold' | 'too narrow' | 'too wide';
  /** How much too narrow or too wide for certain; 0 when it may hold. */
  readonly by: Inches;
  /** The catch range that a latch must have for this width to hold for sure. */
  readonly sureWith: { readonly low: Inches; readonly high: Inches };
}

const total = (terms: readonly Term[], end: 'low' | 'planned' | 'high'): number =>
  sum(terms.map((term) => term[end]));

/** The gap that an opening leaves for its latch when the posts are set `width` inches apart. */
export const gapAt = ({ terms }: Pick<Opening, 'terms'>, width: Inches): Gap => {
  const of = (spread: Term['spread']): Term[] => terms.filter((term) => term.spread === spread);
  const [latches, unsure, loose] = [of('catch'), of('uncertain'), of('adjustable')];
  const [low, high] = [total(latches, 'low'), total(latches, 'high')];
  // adjusted to give the most and the least room
  const [wide, tight] = [width - total(loose, 'low'), width - total(loose, 'high')];
  const rest = width - total(loose, 'planned');
  const gap = {
    planned: inches(rest - total(unsure, 'planned')),
    least: inches(rest - total(unsure, 'high')),
    most: inches(rest - total(unsure, 'low')),
    sureWith: {
      low: inches(wide - total(unsure, 'high')),
      high: inches(tight - total(unsure, 'low')),
    },
  };
  const [most, least] = [wide - total(unsure, 'low'), tight - total(unsure, 'high')];
  // sums of metric parts are off by rounding; a millionth of an inch decides nothing
  if (most < low - slack) return { ...gap, verdict: 'too narrow', by: inches(low - most) };
  if (least > high + slack) return { ...gap, verdict: 'too wide', by: inches(least - high) };
  const sure = gap.sureWith.low >= low - slack && gap.sureWith.high <= high + slack;
  return { ...gap, verdict: sure ? 'holds' : 'may hold', by: inches(0) };
};
