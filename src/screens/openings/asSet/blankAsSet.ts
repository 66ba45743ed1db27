import type { AsSet } from '../../../site/asSet.ts';
import type { Inches } from '../../../units/inches.ts';

/** A set record of which the opening at the top (inches) and the day are all that is known. */
export const blankAsSet = (top: Inches, on: string): AsSet => ({
  by: '',
  on,
  top,
  bottom: null,
  leans: { start: null, end: null },
  leaves: {},
  hinges: {},
  remark: '',
});
