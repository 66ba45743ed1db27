import { gapAt } from '../../engine/gate/gapAt.ts';
import type { Opening } from '../../engine/opening.ts';
import type { Inches } from '../../units/inches.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { inches } from '../../units/inches.ts';
import { exactStyle } from './exactStyle.ts';

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
  const gap = gaps > 1 ? `${gaps} gaps of ${write(planned)} in all` : `a gap of ${write(planned)}`;
  const left = planned < 0 ? `are ${write(planned)} too close for the leaves` : `leave ${gap}`;
  return `${left}: ${by > 0 ? `${verdict} by ${write(by)}` : verdict}`;
};
