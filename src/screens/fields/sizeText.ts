import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/**
 * The size of a part as it is: on a tape where that has it to 1/32 in, else in thousandths of an
 * inch; tenths of a millimetre on a metric site.
 */
export const sizeText = (length: Inches, style: LengthStyle): string => {
  const fine = fineStyle(style);
  if (fine.system === 'mm') return `${Number((length * 25.4).toFixed(1))} mm`;
  if (Number.isInteger(length * 32)) return formatLength(length, { ...fine, fraction: 32 });
  return `${Number(length.toFixed(3))}"`;
};
