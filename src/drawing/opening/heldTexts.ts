import type { Opening } from '../../engine/opening.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { isMetric } from '../../units/isMetric.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';

/** Marks of the tape are counted with this much forgiveness, for lengths that came from metric. */
const dust = 1e-6;

/** Finer than the marks of any tape: so many to the inch, and how so many of them are written; ours. */
const decimals = {
  inch: { perInch: 1000, write: (steps: number): string => `${(steps / 1000).toFixed(3)}"` },
  metric: { perInch: 2540, write: (steps: number): string => `${(steps / 100).toFixed(2)} mm` },
} as const;

/** Between which widths an opening holds for sure, as texts. */
export interface HeldTexts {
  readonly from: string;
  readonly to: string;
}

/**
 * Where an opening holds for sure, written to the marks of the tape and rounded inwards: a crew
 * that keeps within what is written keeps within what holds. Where no mark of the tape lies
 * between, in decimals of an inch, or of a millimetre on a metric site, to the inside; null where nothing holds for sure, or
 * nothing that could be set.
 */
export const heldTexts = (opening: Opening, style: LengthStyle): HeldTexts | null => {
  const { holdsFrom, holdsTo } = opening;
  if (holdsFrom > holdsTo + dust) return null;
  const fine = fineStyle(style);
  const step = lengthOfSteps(1, fine);
  const [from, to] = [Math.ceil(holdsFrom / step - dust), Math.floor(holdsTo / step + dust)];
  if (from <= to) {
    const write = (steps: number): string => formatLength(lengthOfSteps(steps, fine), fine);
    return { from: write(from), to: write(to) };
  }
  const { perInch, write } = decimals[isMetric(style.system) ? 'metric' : 'inch'];
  const [low, high] = [Math.ceil(holdsFrom * perInch - dust), Math.floor(holdsTo * perInch + dust)];
  return low > high ? null : { from: write(low), to: write(high) };
};
