import { phrase } from '../../../phrases/phrase.ts';
import { isMetric } from '../../../units/isMetric.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';

/** The lengths that are at hand to square a corner, inches; null for what was not read yet. */
export interface SquareAtHand {
  readonly base: Inches;
  readonly leg: Inches;
  readonly tape: Inches;
  readonly across: Inches | null;
  readonly ac: Inches | null;
  readonly bd: Inches | null;
}

/** 3-4-5 is told in whole ones of this: a foot, or half a metre. */
export const squareUnit = (style: LengthStyle): Inches =>
  inches(isMetric(style.system) ? 500 / 25.4 : 12);

/** The lengths that a corner starts with: those of the legs that are there, else ours; and a usual tape. */
export const squareStart = (
  style: LengthStyle,
  legs: readonly [Inches, Inches] | null,
): SquareAtHand => {
  const [base, leg] =
    legs ?? (isMetric(style.system) ? [8000 / 25.4, 6000 / 25.4] : [40 * 12, 30 * 12]);
  return {
    base: inches(base),
    leg: inches(leg),
    tape: inches(isMetric(style.system) ? 30_000 / 25.4 : 1200),
    across: null,
    ac: null,
    bd: null,
  };
};

/** Why a length that was typed cannot be one on the ground, in one line; null where it can. */
export const longEnough = (change: Partial<SquareAtHand>, style: LengthStyle): string | null => {
  const [length] = Object.values(change);
  if (typeof length !== 'number' || length > 0) return null;
  return phrase`Length ${formatLength(inches(length), style)}: expected more than 0`;
};
