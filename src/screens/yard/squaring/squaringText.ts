import { isMetric } from '../../../units/isMetric.ts';
import { outOfRectangle, type Diagonals } from '../../../engine/squaring/outOfRectangle.ts';
import { outByRounding, outOfSquare } from '../../../engine/squaring/squareAcross.ts';
import type { Triple } from '../../../engine/squaring/triplesIn.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Trusts } from '../../../site/trusts.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { lengthSteps } from '../../../units/lengthSteps.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';

/** What a check of a corner says, and whether it is square as far as the tape tells. */
export interface SquareVerdict {
  readonly square: boolean;
  readonly text: string;
}

/** The three lengths of a triangle in one line, as on a tape. */
export const tripleText = ({ short, long, across }: Triple, style: LengthStyle): string =>
  [short, long, across].map((side) => formatLength(side, style)).join(' · ');

/** How far the end of a leg comes to stand off its square place by what a tape can say of the way across. */
export const roundingText = (base: Inches, leg: Inches, style: LengthStyle): string => {
  const out = outByRounding(base, leg, style);
  const finest = { ...style, fraction: 32 } as const;
  if (out === 0) return phrase`That is exact on this tape.`;
  if (lengthSteps(out, finest) === 0) {
    const least = formatLength(inches(finestLength(finest)), finest);
    return phrase`On this tape that puts the corner less than ${least} out of square.`;
  }
  return phrase`On this tape that puts the corner ${formatLength(out, finest)} out of square.`;
};

/** The least that a style writes. */
const finestLength = ({ system, fraction }: LengthStyle): number => {
  if (system === 'decimal feet') return 0.12;
  return isMetric(system) ? 1 / 25.4 : 1 / fraction;
};

/**
 * What the way across says of a corner at A whose base runs to B and whose leg runs to C, with all three
 * as they were taped. One line.
 */
export const cornerVerdict = (
  { base, leg, across }: { readonly base: Inches; readonly leg: Inches; readonly across: Inches },
  style: LengthStyle,
): SquareVerdict => {
  const out = outOfSquare({ base, leg, across }, style);
  if (!out.ok) return { square: false, text: out.reason };
  if (lengthSteps(out.value, style) === 0) return { square: true, text: phrase`Square.` };
  const by = formatLength(inches(Math.abs(out.value)), style);
  const text =
    out.value > 0
      ? phrase`Out of square by ${by}: swing C ${by} away from B, its tape from A kept tight.`
      : phrase`Out of square by ${by}: swing C ${by} towards B, its tape from A kept tight.`;
  return { square: false, text };
};

/**
 * What two diagonals say of a rectangle A B C D: which way its far side goes, and whether they are such
 * as its sides can have at all, by how far the site trusts a tape. One line.
 */
export const rectangleVerdict = (
  read: Diagonals,
  style: LengthStyle,
  { tapeLeast, tapeShare }: Pick<Trusts, 'tapeLeast' | 'tapeShare'>,
): SquareVerdict => {
  const { slid, misfit } = outOfRectangle(read);
  // 2.58 standard deviations hold 99 of 100; twice that of one tape for two diagonals and two sides
  const doubt = 2.58 * 2 * (tapeLeast + tapeShare * Math.max(read.ac, read.bd));
  const write = (length: number): string => formatLength(inches(Math.abs(length)), style);
  if (Math.abs(misfit) > doubt) {
    const text =
      misfit > 0
        ? phrase`These diagonals are ${write(misfit)} longer than such sides have: tape the sides again.`
        : phrase`These diagonals are ${write(misfit)} shorter than such sides have: tape the sides again.`;
    return { square: false, text };
  }
  if (lengthSteps(slid, style) === 0) {
    return { square: true, text: phrase`Square: both diagonals are equal.` };
  }
  const [from, to] = slid > 0 ? ['C', 'D'] : ['D', 'C'];
  const text = phrase`Out of square by ${write(slid)}: swing C and D together ${write(slid)} the way from ${from} to ${to}, both sides kept tight.`;
  return { square: false, text };
};
