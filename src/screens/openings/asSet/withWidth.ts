import type { AsSet } from '../../../site/asSet.ts';
import type { Inches } from '../../../units/inches.ts';
import { openingAt } from './openingAt.ts';
import { sizeFault } from './sizeFault.ts';
import { phrase } from '../../../phrases/phrase.ts';

/**
 * A set record with the opening at the top or at the bottom (inches) entered, of `blank` where
 * there was none yet; or the one line that says why not, which names what was found.
 */
export const withWidth = (
  asSet: AsSet | null,
  [at, width]: readonly ['top' | 'bottom', Inches | null],
  {
    blank,
    write,
  }: {
    readonly blank: (top: Inches) => AsSet;
    readonly write: (length: Inches) => string;
  },
): AsSet | string => {
  const called = openingAt[at];
  const wrong = width === null ? null : sizeFault(width, 'more than 0');
  if (width !== null && wrong !== null) return phrase`${called}: ${wrong}, found ${write(width)}`;
  if (at === 'bottom') {
    if (asSet === null) return phrase`${called}: expected the one at the top first`;
    return { ...asSet, bottom: width };
  }
  if (width === null) {
    return phrase`${called}: expected a width, found none; “Forget what was set” takes the record away`;
  }
  return asSet === null ? blank(width) : { ...asSet, top: width };
};
