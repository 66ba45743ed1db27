import type { Alternative } from '../alternative.ts';
import { entry } from '../entry.ts';
import type { AlternativeId, SpecId } from '../ids.ts';
import { namedAlternative } from '../namedAlternative.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** What of an alternative is changed: its name, and what takes the place of the builds that are named. */
export type AlternativeChange = Partial<Pick<Alternative, 'label' | 'instead'>>;

/** The builds without those that are put in place of themselves. */
const others = (instead: Alternative['instead']): Alternative['instead'] =>
  Object.fromEntries(Object.entries(instead).filter(([of, by]) => of !== by));

/**
 * Changes the name of an alternative, or what takes the place of some builds; the others stay. A build that
 * is put in place of itself is that of the plan again. RangeError for an unknown alternative or build, and
 * for a name of blanks.
 */
export const changeAlternative = (
  site: Site,
  id: AlternativeId,
  { label, instead = {} }: AlternativeChange,
): Site => {
  const was = entry(site, 'alternatives', id);
  for (const spec of Object.entries(instead).flat()) entry(site, 'specs', spec as SpecId);
  return withEntry(site, 'alternatives', id, {
    ...was,
    label: label === undefined ? was.label : namedAlternative(label),
    instead: others({ ...was.instead, ...instead }),
  });
};
