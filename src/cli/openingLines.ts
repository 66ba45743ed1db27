import { heldTexts } from '../drawing/opening/heldTexts.ts';
import type { Opening } from '../engine/opening.ts';
import { formatLength } from '../units/formatLength.ts';
import type { LengthStyle } from '../units/lengthStyle.ts';
import { columns } from './columns.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * Where an opening works, in words, to the marks of the tape and never wider than it is; or that no
 * opening is sure to work.
 */
export const holdsLine = (opening: Opening, style: LengthStyle): string => {
  const held = heldTexts(opening, style);
  if (held !== null) return phrase`holds from ${held.from} to ${held.to}`;
  const [from, to] = [formatLength(opening.holdsFrom, style), formatLength(opening.holdsTo, style)];
  return phrase`no opening is sure to hold (from ${from} is past to ${to}): measure the hinges, or take a latch with a longer reach`;
};

/** An opening as lines: each term with what it may be, then the sum and where it holds. */
export const openingLines = (opening: Opening, style: LengthStyle): string[] => {
  const rows = opening.terms.map(({ label, low, planned, high, source }) => [
    label,
    formatLength(planned, style),
    low === high ? '' : phrase`${formatLength(low, style)} to ${formatLength(high, style)}`,
    source,
  ]);
  const total = [phrase`Opening`, formatLength(opening.target, style)];
  return [...columns([...rows, total], ['left', 'right']), holdsLine(opening, style)];
};
