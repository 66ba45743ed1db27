import type { AsSet } from '../../../site/asSet.ts';
import type { Site } from '../../../site/site.ts';
import type { Inches } from '../../../units/inches.ts';

/**
 * A set record of which the opening at the top (inches) and the day are all that is known; by whom
 * is taken over from another gate of the site that was set on that day.
 */
export const blankAsSet = ({ gates }: Pick<Site, 'gates'>, top: Inches, on: string): AsSet => ({
  by:
    Object.values(gates).find(({ asSet }) => asSet?.on === on && asSet.by !== '')?.asSet?.by ?? '',
  on,
  top,
  bottom: null,
  leans: { start: null, end: null },
  leaves: {},
  hinges: {},
  remark: '',
});
