import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { FitRow } from './fitsOf.ts';
import { oneLine } from './names.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { phrase } from '../../phrases/phrase.ts';

const partWords: Readonly<Record<FitRow['role'], string>> = {
  hinge: phrase`hinge`,
  latch: phrase`latch`,
  closer: phrase`closer`,
};

/** The outside diameters that a part is made for, `1.900" to 2.375"`; null where nobody has said. */
export const madeForText = ({ low, high }: FitRow, style: LengthStyle): string | null => {
  if (low === null || high === null) return null;
  const write = (length: Inches): string => pipeSize(length, style);
  return low === high ? write(low) : phrase`${write(low)} to ${write(high)}`;
};

/**
 * That a part does not fit, in one line that says what it is made for and what it meets; null where
 * it fits or where that is not known.
 */
export const misfitText = (row: FitRow, style: LengthStyle): string | null => {
  const { role, label, against, on, od, fits } = row;
  const range = madeForText(row, style);
  if (fits !== false || od === null || range === null) return null;
  const [what, is] = [phrase`${partWords[role]} “${oneLine(label)}”`, pipeSize(od, style)];
  return against === 'post'
    ? phrase`${what} fits posts of ${range} OD: ${on} is ${is}`
    : phrase`${what} fits frames of ${range} OD: ${on} is ${is}`;
};
