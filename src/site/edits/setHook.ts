import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { LineId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/** Hooks the tape at the other or the same end of each run of a line. RangeError for an unknown line. */
export const setHook = (site: Site, id: LineId, hook: FenceLine['hook']): Site =>
  withEntry(site, 'lines', id, { ...entry(site, 'lines', id), hook });
