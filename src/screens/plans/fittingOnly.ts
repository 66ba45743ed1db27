import type { FitRow } from '../../engine/checks/fitsOf.ts';
import { misfitText } from '../../engine/checks/misfitText.ts';
import { newMisfit } from '../../engine/checks/newMisfit.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import { phrase, sentenceCase } from '../../phrases/phrase.ts';
import type { Site } from '../../site/site.ts';

/** What is expected instead of a part that does not fit. */
const fitting: Readonly<Record<FitRow['role'], string>> = {
  hinge: phrase`expected a hinge that fits it`,
  latch: phrase`expected a latch that fits it`,
  closer: phrase`expected a closer that fits it`,
};

interface Change {
  readonly before: Site;
  readonly after: Site;
}

/**
 * A site after other parts were put into a gate. RangeError of one line where one of them is made
 * for other posts or frames than it would be fixed to; what nobody has said is no misfit.
 */
export const fittingOnly = (
  layout: Pick<Layout, 'posts'>,
  laid: GateLayout,
  change: Change,
): Site => {
  const row = newMisfit(layout, laid, change);
  const says = row === null ? null : misfitText(row, change.after.lengths);
  if (row === null || says === null) return change.after;
  throw new RangeError(`${sentenceCase(says)}, ${fitting[row.role]}`);
};
