import { gapAt, type Gap } from '../../engine/gate/gapAt.ts';
import type { Opening } from '../../engine/opening.ts';
import type { Inches } from '../../units/inches.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { inches } from '../../units/inches.ts';
import { exactStyle } from './exactStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

const verdicts: Readonly<Record<Gap['verdict'], string>> = {
  holds: phrase`holds`,
  'may hold': phrase`may hold`,
  'too narrow': phrase`too narrow`,
  'too wide': phrase`too wide`,
};

const leftText = (planned: number, gaps: number, size: string): string => {
  if (planned < 0) return phrase`are ${size} too close for the leaves`;
  return gaps > 1 ? phrase`leave ${gaps} gaps of ${size} in all` : phrase`leave a gap of ${size}`;
};

/**
 * What posts set `width` apart (inches, inside faces) do to an opening: the gap that they leave for
 * the latch, and whether it catches or by how much it does not. To follow “posts set at …”.
 */
export const setAtText = (
  opening: Pick<Opening, 'terms'>,
  width: Inches,
  style: LengthStyle,
): string => {
  const { planned, verdict, by } = gapAt(opening, width);
  const write = (length: number): string => {
    const size = inches(Math.abs(length));
    return formatLength(size, exactStyle([size], style));
  };
  // leaves that latch to a stop between them share what is left
  const gaps = opening.terms.filter(({ spread }) => spread === 'catch').length;
  const verdictText = verdicts[verdict];
  const left = leftText(planned, gaps, write(planned));
  return `${left}: ${by > 0 ? phrase`${verdictText} by ${write(by)}` : verdictText}`;
};
