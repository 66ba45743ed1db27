import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/**
 * A clear opening, or the centres of its posts, as it stands beside tape readings: in the site's
 * own units, so finely that 1/16 in is not lost. Hundredths of a foot are too coarse for that:
 * there it is written in thousandths, with the inches behind.
 */
export const openingText = (value: Inches, style: LengthStyle): string => {
  if (style.system === 'm') return formatLength(value, style);
  const fine = formatLength(value, fineStyle(style));
  return style.system === 'decimal feet' ? `${(value / 12).toFixed(3)}' (${fine})` : fine;
};
