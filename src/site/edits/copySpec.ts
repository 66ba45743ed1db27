import { entry } from '../entry.ts';
import { freshName } from '../freshName.ts';
import type { SpecId } from '../ids.ts';
import type { Site } from '../site.ts';
import { addSpec } from './addSpec.ts';

/** So many characters a label may have, with room for a number behind. */
const longest = 190;

/**
 * Lets a site carry a copy of a build under an id of its own, by the next name of its row: `6 ft 2` after
 * `6 ft`. RangeError for an unknown build and a wrong id; a site that has one under the id keeps it.
 */
export const copySpec = (site: Site, from: SpecId, id: SpecId): Site => {
  const spec = entry(site, 'specs', from);
  const stem = `${spec.label.replace(/ \d+$/, '').slice(0, longest)} `;
  const names = Object.values(site.specs).map(({ label }) => label);
  return addSpec(site, id, { ...spec, label: freshName(stem, [...names, `${stem}1`]) });
};
