import { formatLength } from '../../units/formatLength.ts';
import { sum, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a group of bays is called: in full, and where that is too long. */
export interface GroupTexts {
  readonly text: string;
  readonly shorter?: string;
}

/** Bays of more lengths than this are no run that one can read. */
const mostLengths = 2;

/** How often each length stands there as it is written, the most frequent first. */
const counted = (written: readonly string[]): readonly (readonly [string, number])[] =>
  [...new Set(written)]
    .map((text) => [text, written.filter((other) => other === text).length] as const)
    .toSorted(([, a], [, b]) => b - a);

/**
 * Neighbouring bays written as one, in the trade's manner: `8 bays at 9'-0" = 72'-0"`; of two lengths
 * `5 at 9'-0" + 2 at 9'-0 1/16"`; else, or where that is too long, `7 bays, together 63'-0 1/8"`.
 */
export const groupTexts = (lengths: readonly Inches[], style: LengthStyle): GroupTexts => {
  const found = counted(lengths.map((length) => formatLength(length, style)));
  const total = formatLength(sum(lengths), style);
  const [[each] = ['']] = found;
  if (found.length === 1)
    return {
      text: phrase`${lengths.length} bays at ${each} = ${total}`,
      shorter: phrase`${lengths.length} at ${each}`,
    };
  const together = phrase`${lengths.length} bays, together ${total}`;
  if (found.length > mostLengths) return { text: together };
  const run = found.map(([text, count]) => phrase`${count} at ${text}`).join(' + ');
  return { text: run, shorter: together };
};
