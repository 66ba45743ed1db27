import { leafWidth } from '../../../site/leafWidth.ts';
import { readWidths } from '../../../site/readWidths.ts';
import type { Widths } from '../../../site/widths.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { phrase } from '../../../phrases/phrase.ts';

const lines: Readonly<Record<keyof Widths, (width: string) => string>> = {
  top: (width) => phrase`${width} at the top governs: the largest has to go in.`,
  middle: (width) => phrase`${width} in the middle governs: the largest has to go in.`,
  bottom: (width) => phrase`${width} at the bottom governs: the largest has to go in.`,
};

/** Which width of a leaf governs; null where one only was measured, or all are alike. */
export const governingText = (widths: Widths, style: LengthStyle): string | null => {
  const all = readWidths(widths);
  const width = leafWidth({ widths });
  if (all.every((one) => one === width)) return null;
  const place = (['top', 'middle', 'bottom'] as const).find((at) => widths[at] === width) ?? 'top';
  return lines[place](sizeText(width, style));
};
