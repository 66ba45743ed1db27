import { slack } from '../../geometry/tolerance.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { inches } from '../../units/inches.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import { lengthSteps } from '../../units/lengthSteps.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/**
 * How some lengths (inches) are written together where a rounded one would mislead, as on an order:
 * in the site's fine style where that writes each of them as it is, else in 1/32 in. Millimetres
 * stay millimetres.
 */
export const exactStyle = (lengths: readonly number[], style: LengthStyle): LengthStyle => {
  const fine = fineStyle(style);
  const written = (length: number): number =>
    lengthOfSteps(lengthSteps(inches(length), fine), fine);
  const exact = lengths.every((length) => Math.abs(written(length) - length) < slack);
  return exact || fine.system === 'mm' ? fine : { ...fine, fraction: 32 };
};
