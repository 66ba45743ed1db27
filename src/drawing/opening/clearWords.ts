import type { AsSet } from '../../site/asSet.ts';
import type { Inches } from '../../units/inches.ts';
import type { SetWords } from './setWords.ts';
import { phrase } from '../../phrases/phrase.ts';

const gapText = (at: 'top' | 'bottom' | null, has: string, asked: string): string => {
  if (at === null) return phrase`Clear width ${has}, wanted ${asked}.`;
  return at === 'top'
    ? phrase`Clear width ${has} at the top, wanted ${asked}.`
    : phrase`Clear width ${has} at the bottom, wanted ${asked}.`;
};

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
  const [has, asked] = [write(width), write(wanted)];
  const gap = gapText(bottom === null ? null : atBottom ? 'bottom' : 'top', has, asked);
  const by = write(off(width));
  if (by === write(0)) return { level: 'holds', words: phrase`As wanted`, gap };
  const words =
    width > wanted ? phrase`Wider than wanted by ${by}` : phrase`Narrower than wanted by ${by}`;
  return { level: 'ask', words, gap };
};
