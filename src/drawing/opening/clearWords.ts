import type { AsSet } from '../../site/asSet.ts';
import type { Inches } from '../../units/inches.ts';
import type { SetWords } from './setWords.ts';

/**
 * How a gap without a gate came out against the clear width that was wanted (inches, written by
 * `write`): nothing hangs in it, so it is wider or narrower and no more. Of top and bottom the one
 * that is farther off is told.
 */
export const clearWords = (
  { top, bottom }: Pick<AsSet, 'top' | 'bottom'>,
  wanted: Inches,
  write: (length: number) => string,
): SetWords => {
  const off = (width: number): number => Math.abs(width - wanted);
  const atBottom = bottom !== null && off(bottom) > off(top);
  const width = atBottom ? bottom : top;
  const where = bottom === null ? '' : ` at the ${atBottom ? 'bottom' : 'top'}`;
  const gap = `Clear width ${write(width)}${where}, wanted ${write(wanted)}.`;
  const by = write(off(width));
  if (by === write(0)) return { level: 'holds', words: 'As wanted', gap };
  const side = width > wanted ? 'Wider' : 'Narrower';
  return { level: 'ask', words: `${side} than wanted by ${by}`, gap };
};
