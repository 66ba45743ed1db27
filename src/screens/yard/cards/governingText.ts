import { leafWidth } from '../../../site/leafWidth.ts';
import { readWidths } from '../../../site/readWidths.ts';
import type { Widths } from '../../../site/widths.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { sizeText } from '../../fields/sizeText.ts';

const places = { top: 'at the top', middle: 'in the middle', bottom: 'at the bottom' } as const;

/** Which width of a leaf governs; null where one only was measured, or all are alike. */
export const governingText = (widths: Widths, style: LengthStyle): string | null => {
  const all = readWidths(widths);
  const width = leafWidth({ widths });
  if (all.every((one) => one === width)) return null;
  const place = (['top', 'middle', 'bottom'] as const).find((at) => widths[at] === width) ?? 'top';
  return `${sizeText(width, style)} ${places[place]} governs: the largest has to go in.`;
};
