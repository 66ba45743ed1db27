import { entry } from '../entry.ts';
import type { LineId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { copySpec } from './copySpec.ts';
import { setLineSpec } from './setLineSpec.ts';

/** Gives a line a build of its own: a copy of the one that it is built to. Other lines keep theirs. RangeError for an unknown line. */
export const ownSpec = (site: Site, id: LineId): Site => {
  const copy = nextId(site, 'spec');
  return setLineSpec(copySpec(site, entry(site, 'lines', id).spec, copy), id, copy);
};
