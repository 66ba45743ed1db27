import { entry } from '../entry.ts';
import type { LineId, SpecId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Builds a line to another fence spec. RangeError for an unknown line or spec. */
export const setLineSpec = (site: Site, id: LineId, spec: SpecId): Site => {
  entry(site, 'specs', spec);
  return withEntry(site, 'lines', id, { ...entry(site, 'lines', id), spec });
};
