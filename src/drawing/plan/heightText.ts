import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';

/** A height over the datum (inches) with its sign, written in a site's lengths; the datum has none. */
export const heightText = (z: Inches, style: LengthStyle): string => {
  const text = formatLength(z, style);
  return text.startsWith('-') || text === formatLength(inches(0), style) ? text : `+${text}`;
};
