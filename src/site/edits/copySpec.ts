import { entry } from '../entry.ts';
import { freshName } from '../freshName.ts';
import type { LineId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { addSpec } from './addSpec.ts';
import { setLineSpec } from './setLineSpec.ts';

/**
 * Gives a line a build of its own: a copy of the one that it is built to, under a name of its own. Other
 * lines keep theirs. RangeError for an unknown line.
 */
export const copySpec = (site: Site, id: LineId): Site => {
  const { spec } = entry(site, 'lines', id);
  const from = entry(site, 'specs', spec);
  const copy = nextId(site, 'spec');
  const stem = `${from.label.replace(/ \d+$/, '')} `;
  const names = Object.values(site.specs).map(({ label }) => label);
  const label = freshName(stem, [...names, `${stem}1`]);
  return setLineSpec(addSpec(site, copy, { ...from, label }), id, copy);
};
