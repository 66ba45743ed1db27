import type { Run } from '../../engine/layout.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { roundLength } from '../../units/roundLength.ts';

/** What the tape shows at a station of a run: from the end that is hooked, rounded to the style. */
export const readingAt = (
  { length }: Run,
  station: Inches,
  { hook, style }: { readonly hook: 'start' | 'end'; readonly style: LengthStyle },
): Inches => roundLength(inches(hook === 'start' ? station : length - station), style);
