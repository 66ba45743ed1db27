import { farthest } from '../../../geometry/tolerance.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Inches } from '../../../units/inches.ts';

/**
 * What is wrong with a size (inches) that was found on site, as the end of a line; null where it
 * can be. `least` is told apart: nothing stands 0 wide, but a post may lean by 0.
 */
export const sizeFault = (size: Inches, least: 'more than 0' | '0 or more'): string | null => {
  if (size < 0 || (size === 0 && least === 'more than 0')) {
    return least === 'more than 0' ? phrase`expected more than 0` : phrase`expected 0 or more`;
  }
  return size > farthest ? phrase`expected a size that can be measured between posts` : null;
};
