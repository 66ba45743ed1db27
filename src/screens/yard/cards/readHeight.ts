import type { Inches } from '../../../units/inches.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import type { Parsed } from '../../../units/parsed.ts';
import { parseLength } from '../../../units/parseLength.ts';

/**
 * A height of either sign as it is typed, inches over the datum: as a length, a plus sign allowed. A
 * bare number has the unit of `system`.
 */
export const readHeight = (text: string, system: LengthSystem): Parsed<Inches> =>
  parseLength(text.replace(/^\s*\+/, ''), system);
