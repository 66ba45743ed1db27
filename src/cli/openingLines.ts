import type { Opening } from '../engine/opening.ts';
import { formatLength } from '../units/formatLength.ts';
import { inches, type Inches } from '../units/inches.ts';
import type { LengthStyle } from '../units/lengthStyle.ts';
import { finest } from '../units/roundLength.ts';
import { columns } from './columns.ts';

/** Steps of the tape are counted with this much forgiveness, for lengths that came from metric. */
const dust = 1e-6;

/** Both bounds to the tape's step, inwards: never wider than what holds. */
const inward = ({ holdsFrom, holdsTo }: Opening, style: LengthStyle): [Inches, Inches] => {
  const step = finest(style);
  return [
    inches(Math.ceil(holdsFrom / step - dust) * step),
    inches(Math.floor(holdsTo / step + dust) * step),
  ];
};

/**
 * Where an opening works, in words, to the tape's step but never wider than it is; or that no
 * opening is sure to work.
 */
export const holdsLine = (opening: Opening, style: LengthStyle): string => {
  const { holdsFrom, holdsTo } = opening;
  if (holdsFrom > holdsTo + dust) {
    const [from, to] = [formatLength(holdsFrom, style), formatLength(holdsTo, style)];
    return `no opening is sure to hold (from ${from} is past to ${to}): measure the hinges, or take a latch with a longer reach`;
  }
  const [from, to] = inward(opening, style);
  // between two marks of the tape: only decimals can say it
  if (from > to) return `holds from ${holdsFrom.toFixed(3)} in to ${holdsTo.toFixed(3)} in`;
  return `holds from ${formatLength(from, style)} to ${formatLength(to, style)}`;
};

/** An opening as lines: each term with what it may be, then the sum and where it holds. */
export const openingLines = (opening: Opening, style: LengthStyle): string[] => {
  const rows = opening.terms.map(({ label, low, planned, high, source }) => [
    label,
    formatLength(planned, style),
    low === high ? '' : `${formatLength(low, style)} to ${formatLength(high, style)}`,
    source,
  ]);
  const total = ['Opening', formatLength(opening.target, style)];
  return [...columns([...rows, total], ['left', 'right']), holdsLine(opening, style)];
};
